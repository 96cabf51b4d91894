import { Screen } from '../../kit/screen.tsx';

/** The money of the whole shop: where each job stands, what is owed, what waits. */
export function MoneyScreen() {
  return (
    <Screen title="Money">
      <div className="stack" />
    </Screen>
  );
}
