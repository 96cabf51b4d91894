import type { ReactNode } from 'react';
import { FileTrigger } from 'react-aria-components';
import { Button, type ButtonTone } from './button.tsx';

/** A button that asks for one text file and reads it. */
export function FileButton(props: {
  readonly children: ReactNode;
  readonly icon?: ReactNode;
  readonly tone?: ButtonTone;
  /** Endings of the files that are offered, such as `.csv`. */
  readonly endings: readonly string[];
  readonly onText: (text: string, fileName: string) => void;
}) {
  return (
    <FileTrigger
      acceptedFileTypes={[...props.endings]}
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) void file.text().then((text) => props.onText(text, file.name));
      }}
    >
      <Button tone={props.tone ?? 'plain'} icon={props.icon}>
        {props.children}
      </Button>
    </FileTrigger>
  );
}
