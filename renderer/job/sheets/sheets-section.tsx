import { Download, ExternalLink } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { lackSentences } from '../../../core/documents/lacks.ts';
import { sheetTitles } from '../../../core/documents/sheet-head.ts';
import { type SheetKind, sheetKinds } from '../../../core/documents/sheet.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { invoke } from '../../bridge.ts';
import { fromBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { useJob } from '../job-context.ts';
import { allSaved } from '../parts/all-saved.ts';
import { NoFigures } from '../parts/no-figures.tsx';

type PaperSize = 'letter' | 'a4';

type Paper = {
  readonly fileName: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  readonly address: string;
};

/** The last sheet that was made stays in view while the next is made. */
type Making = {
  readonly paper: Paper | null;
  readonly isNewest: boolean;
  readonly problem: Problem | null;
};

/** The sheets on paper: previewed as they print, saved as PDF. */
export function SheetsSection() {
  const { computation, surroundings } = useJob();
  const [sheet, setSheet] = useState<SheetKind>('takeoff');
  const [paperSize, setPaperSize] = useState<PaperSize>(surroundings.settings.paperSize);
  const making = usePaper(sheet, paperSize);
  const info = useAnswer('app.info', {});
  if (computation.good === null) return <NoFigures />;
  const lacks = lackSentences(computation.good.result);
  const { paper } = making;
  return (
    <div className="sheets">
      <div className="sheets-tools">
        <SelectField
          label="Sheet"
          value={sheet}
          choices={sheetKinds.map((kind) => ({ id: kind, label: sheetTitles[kind] }))}
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
          {paper !== null && making.isNewest
            ? `${paper.fileName}, ${paper.pages} ${paper.pages === 1 ? 'page' : 'pages'}`
            : making.problem === null
              ? 'Making the sheet'
              : ''}
        </p>
        <Button
          tone={paper === null ? 'plain' : 'main'}
          icon={<Download size={15} aria-hidden="true" />}
          isDisabled={paper === null}
          onPress={() => {
            if (paper !== null) void saveFile(paper.fileName, paper.bytes, 'application/pdf');
          }}
        >
          Save as PDF
        </Button>
        {info.data?.shell === 'loopback' ? (
          <Button
            icon={<ExternalLink size={15} aria-hidden="true" />}
            isDisabled={paper === null}
            onPress={() => {
              if (paper !== null) window.open(paper.address, '_blank');
            }}
          >
            Open to print
          </Button>
        ) : null}
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
      {making.problem === null ? null : (
        <Banner tone="problem" isLive>
          {problemSentence(making.problem)}
        </Banner>
      )}
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
  const wanted = useMemo(() => ({ good, sheet, paperSize }), [good, sheet, paperSize]);
  const [made, setMade] = useState<{
    readonly of: unknown;
    readonly paper: Paper | null;
    readonly problem: Problem | null;
  }>({ of: null, paper: null, problem: null });
  const { paper } = made;
  useEffect(
    () => () => {
      if (paper !== null) URL.revokeObjectURL(paper.address);
    },
    [paper],
  );
  useEffect(() => {
    if (wanted.good === null) return undefined;
    let left = false;
    const fail = (problem: Problem): void => {
      if (!left) setMade({ of: wanted, paper: null, problem });
    };
    const make = async (): Promise<void> => {
      await allSaved(editor);
      const reply = await invoke('paper.make', {
        jobId,
        sheet: wanted.sheet,
        paperSize: wanted.paperSize,
      });
      if (!reply.ok) {
        fail(reply.problem);
      } else if (!left) {
        setMade({ of: wanted, paper: paperOf(reply.value), problem: null });
      }
    };
    make().catch(() => fail({ code: 'not-here', what: 'Making the sheet while Eavewright does not answer' }));
    return () => {
      left = true;
    };
  }, [jobId, editor, wanted]);
  const isNewest = made.of === wanted;
  return { paper, isNewest, problem: isNewest ? made.problem : null };
}

function paperOf(made: CommandOutput<'paper.make'>): Paper {
  const bytes = fromBase64(made.pdfBase64);
  return {
    fileName: made.fileName.replace(/(\.pdf)?$/, '.pdf'),
    bytes,
    pages: made.pages,
    address: URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' })),
  };
}
