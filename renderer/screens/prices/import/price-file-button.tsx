import { FileUp } from 'lucide-react';
import { FileTrigger } from 'react-aria-components';
import { Button, type ButtonTone } from '../../../kit/button.tsx';

/** Asks for a price list as a text file. */
export function PriceFileButton(props: {
  readonly tone?: ButtonTone;
  readonly children: string;
  readonly onFile: (file: File) => void;
}) {
  return (
    <FileTrigger
      acceptedFileTypes={['.csv', '.txt', '.tsv', 'text/csv', 'text/plain']}
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) props.onFile(file);
      }}
    >
      <Button tone={props.tone ?? 'plain'} icon={<FileUp size={16} aria-hidden="true" />}>
        {props.children}
      </Button>
    </FileTrigger>
  );
}
