import { Link } from 'wouter';
import { EmptyState } from '../kit/empty-state.tsx';
import { Screen } from '../kit/screen.tsx';

/** An address that leads nowhere. */
export function NotFoundScreen() {
  return (
    <Screen title="Nothing here">
      <EmptyState title="This address leads to no screen.">
        Go back to <Link href="/jobs">the jobs</Link>.
      </EmptyState>
    </Screen>
  );
}
