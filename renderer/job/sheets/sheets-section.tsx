import { Download, ExternalLink } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import { lackSentences } from '../../../core/documents/lacks.ts';
import { type SheetKind, sheetKinds } from '../../../core/documents/sheet.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { invoke } from '../../bridge.ts';
import { fromBase64 } from '../../host/base64.ts';
import { saveFile } from '../../host/save-file.ts';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import type { JobEditor } from '../editor/job-editor.ts';
import { useJob } from '../job-context.ts';
import { NoFigures } from '../parts/no-figures.tsx';

const sheetWords: Readonly<Record<SheetKind, string>> = {
  takeoff: 'Takeoff',
  'cut-list': 'Cut list',
  quote: 'Quote',
};

type PaperSize = 'letter' | 'a4';

type Paper = {
  readonly fileName: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  readonly address: string;
};

type Making =
  | { readonly kind: 'making' }
  | { readonly kind: 'made'; readonly paper: Paper }
  | { readonly kind: 'problem'; readonly problem: Problem };

/** The sheets on paper: previewed as they print, saved as PDF. */
export function SheetsSection() {
  const { computation, surroundings } = useJob();
  const [sheet, setSheet] = useState<SheetKind>('takeoff');
  const [paperSize, setPaperSize] = useState<PaperSize>(surroundings.settings.paperSize);
  const making = usePaper(sheet, paperSize);
  if (computation.good === null) return <NoFigures />;
  const lacks = lackSentences(computation.good.result);
  const paper = making.kind === 'made' ? making.paper : null;
  return (
    <div className="sheets">
      <div className="sheets-tools">
        <SelectField
          label="Sheet"
          value={sheet}
          choices={sheetKinds.map((kind) => ({ id: kind, label: sheetWords[kind] }))}
          onChange={setSheet}
        />
        <SelectField
          label="Paper"
          value={paperSize}
          choices={[
            { id: 'letter', label: 'Letter, 8-1/2 x 11 in.' },
            { id: 'a4', label: 'A4, 210 x 297 mm' },
          ]}
          onChange={setPaperSize}
        />
        <p className="muted" role="status">
          {paper === null
            ? making.kind === 'making'
              ? 'Making the sheet'
              : ''
            : `${paper.fileName}, ${paper.pages} ${paper.pages === 1 ? 'page' : 'pages'}`}
        </p>
        <Button
          tone="main"
          icon={<Download size={15} aria-hidden="true" />}
          isDisabled={paper === null}
          onPress={() => {
            if (paper !== null) void saveFile(paper.fileName, paper.bytes, 'application/pdf');
          }}
        >
          Save as PDF
        </Button>
        <Button
          icon={<ExternalLink size={15} aria-hidden="true" />}
          isDisabled={paper === null}
          onPress={() => {
            if (paper !== null) window.open(paper.address, '_blank', 'noopener');
          }}
        >
          Open to print
        </Button>
      </div>
      {computation.current ? null : (
        <Banner tone="caution">
          The sheet is made from what was last saved and read. Mend the entries first.
        </Banner>
      )}
      {lacks.length === 0 ? null : (
        <Banner tone="caution">
          {`The sheet says of itself that it is not complete: ${lacks.length} ${lacks.length === 1 ? 'thing is' : 'things are'} missing. See Estimate.`}
        </Banner>
      )}
      {making.kind === 'problem' ? (
        <Banner tone="problem" isLive>
          {problemSentence(making.problem)}
        </Banner>
      ) : null}
      {paper === null ? null : (
        // oxlint-disable-next-line react/iframe-missing-sandbox -- a sandboxed frame shows no PDF; the bytes are our own.
        <iframe
          className="sheet-preview"
          src={paper.address}
          title={`Preview of ${paper.fileName}, ${paper.pages} pages`}
        />
      )}
    </div>
  );
}

/** Makes the sheet anew whenever the saved job, the sheet or the paper changes. */
function usePaper(sheet: SheetKind, paperSize: PaperSize): Making {
  const { jobId, editor, computation } = useJob();
  const { good } = computation;
  const [made, setMade] = useState<{ readonly of: unknown; readonly making: Making } | null>(null);
  const wanted = useMemo(() => ({ good, sheet, paperSize }), [good, sheet, paperSize]);
  useEffect(() => {
    if (wanted.good === null) return undefined;
    let left = false;
    let address: string | null = null;
    const show = (making: Making): void => {
      if (!left) setMade({ of: wanted, making });
    };
    const make = async (): Promise<void> => {
      await allSaved(editor);
      const reply = await invoke('paper.make', { jobId, sheet: wanted.sheet, paperSize: wanted.paperSize });
      if (!reply.ok) {
        show({ kind: 'problem', problem: reply.problem });
      } else if (!left) {
        const bytes = fromBase64(reply.value.pdfBase64);
        address = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
        const fileName = reply.value.fileName.replace(/(\.pdf)?$/, '.pdf');
        show({ kind: 'made', paper: { fileName, bytes, pages: reply.value.pages, address } });
      }
    };
    make().catch(() =>
      show({
        kind: 'problem',
        problem: { code: 'not-here', what: 'Making the sheet while Eavewright does not answer' },
      }),
    );
    return () => {
      left = true;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [jobId, editor, wanted]);
  return made !== null && made.of === wanted ? made.making : { kind: 'making' };
}

/** Waits until the host holds everything typed, since it makes the sheet from what is saved; at most two seconds. */
async function allSaved(editor: JobEditor): Promise<void> {
  for (let turn = 0; turn < 40 && !editor.isSaved(); turn += 1) {
    editor.flush();
    // oxlint-disable-next-line no-await-in-loop -- a pause between looks is the point.
    await new Promise((resolve) => window.setTimeout(resolve, 50));
  }
}
