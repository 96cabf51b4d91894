import { Search, X } from 'lucide-react';
import { Button, Input, SearchField as AriaSearchField } from 'react-aria-components';

/** A field that narrows the list under it as one types. Escape empties it. */
export function SearchField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  return (
    <AriaSearchField
      className="field search"
      aria-label={props.label}
      value={props.value}
      onChange={props.onChange}
    >
      <div className="field-box">
        <Search className="search-sign" size={16} aria-hidden="true" />
        <Input className="field-input" placeholder={props.label} />
        <Button className="search-clear" aria-label="Empty the search">
          <X size={14} aria-hidden="true" />
        </Button>
      </div>
    </AriaSearchField>
  );
}
