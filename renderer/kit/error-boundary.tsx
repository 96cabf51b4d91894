import { Component, type ReactNode } from 'react';
import { problemSentence } from '../../core/problems/sentence.ts';
import { Banner } from './banner.tsx';
import { Button } from './button.tsx';

/** Catches a bug on one screen, so that the rest of the program stays in reach. */
export class ErrorBoundary extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return (
      <div className="frame-banner">
        <Banner
          tone="problem"
          isLive
          actions={<Button onPress={() => this.setState({ failed: false })}>Show the screen again</Button>}
        >
          {problemSentence({ code: 'internal' })}
        </Banner>
      </div>
    );
  }
}
