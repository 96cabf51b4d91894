import { Button } from '../../kit/button.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';

/** What stands in the list of jobs while it has none to show, for each reason. */
export function JobsEmpty(props: {
  readonly search: string;
  readonly showsArchived: boolean;
  readonly onNew: () => void;
  readonly onOpenSample: () => void;
  readonly onOpenFinished: () => void;
  readonly onEmptySearch: () => void;
}) {
  if (props.search !== '') {
    return (
      <EmptyState
        title={`No job has "${props.search}" in its name, customer or address.`}
        actions={<Button onPress={props.onEmptySearch}>Show all again</Button>}
      >
        Try fewer letters{props.showsArchived ? '.' : ', or show archived jobs too.'}
      </EmptyState>
    );
  }
  return (
    <EmptyState
      title="No jobs yet."
      actions={
        <>
          <Button tone="main" onPress={props.onOpenSample}>
            Open the sample job
          </Button>
          <Button onPress={props.onNew}>Start a job of your own</Button>
          <Button tone="quiet" onPress={props.onOpenFinished}>
            Bring in finished jobs to look at
          </Button>
        </>
      }
    >
      The sample is an invented house with two eaves. It shows the whole way from tape readings to a printed
      quote, and brings invented prices with it, so that every figure has something behind it. Change what you
      like.
    </EmptyState>
  );
}
