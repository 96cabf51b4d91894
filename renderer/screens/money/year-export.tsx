import { Download } from 'lucide-react';
import { useState } from 'react';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Button } from '../../kit/button.tsx';
import { SelectField } from '../../kit/select-field.tsx';

/** Saves a year for the accountant: this one or one of the last nine. */
export function YearExport() {
  const info = useAnswer('app.info', {});
  const thisYear = Number((info.data?.today ?? '').slice(0, 4));
  const [chosen, setChosen] = useState<string | null>(null);
  if (info.data === undefined) return null;
  const year = chosen ?? String(thisYear);
  const years = Array.from({ length: 10 }, (_, back) => String(thisYear - back));
  const save = async (): Promise<void> => {
    const file = await attempt('money.exportYear', { year: Number(year) });
    if (file !== undefined) await saveFile(file.fileName, fromBase64(file.base64), 'application/zip');
  };
  return (
    <div className="year-choice">
      <SelectField
        label="Year for the accountant"
        labelHidden
        value={year}
        choices={years.map((id) => ({ id, label: id }))}
        onChange={setChosen}
      />
      <Button icon={<Download size={16} aria-hidden="true" />} onPress={() => void save()}>
        Year for the accountant
      </Button>
    </div>
  );
}
