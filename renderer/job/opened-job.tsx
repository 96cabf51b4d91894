import { Redo2, Undo2 } from 'lucide-react';
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { Redirect, useLocation, useParams } from 'wouter';
import { useCommand } from '../commands/command-handlers.ts';
import { IconButton } from '../kit/icon-button.tsx';
import { Screen } from '../kit/screen.tsx';
import { SectionLinks } from '../kit/section-links.tsx';
import { BillingSection } from './billing/billing-section.tsx';
import { ChecksSection } from './checks/checks-section.tsx';
import type { Surroundings } from './compute/computation.ts';
import { useComputation } from './compute/use-computation.ts';
import { useJobSearch, useSearchedPlans } from './compute/use-plan-search.ts';
import { CostSection } from './cost/cost-section.tsx';
import { CutPlanSection } from './cut-plan/cut-plan-section.tsx';
import { DesignSection } from './design/design-section.tsx';
import type { JobEditor } from './editor/job-editor.ts';
import { EstimateSection } from './estimate/estimate-section.tsx';
import { type Job, JobContext } from './job-context.ts';
import { QuoteSection } from './quote/quote-section.tsx';
import { isSection, sections, type SectionId } from './sections.ts';
import { JobSaved } from './parts/job-saved.tsx';
import { SectionHeading } from './parts/section-heading.tsx';
import { StandingLine } from './parts/standing-line.tsx';
import { useGoTo } from './parts/use-go-to.ts';
import { SheetsSection } from './sheets/sheets-section.tsx';
import { SurveySection } from './survey/survey-section.tsx';
import { TakeoffSection } from './takeoff/takeoff-section.tsx';
import { WalkBackPanel } from './walk-back/walk-back-panel.tsx';

/** An opened job: its head, the section in view, the walk back beside it and the line that says how figures stand. */
export function OpenedJob(props: {
  readonly jobId: string;
  readonly editor: JobEditor;
  readonly surroundings: Surroundings;
  readonly openAgain: () => void;
}) {
  const { jobId, editor, surroundings } = props;
  const params = useParams();
  const [, navigate] = useLocation();
  const section: SectionId = isSection(params['section']) ? params['section'] : 'survey';
  const state = useSyncExternalStore(editor.subscribe, editor.read);
  const documents = state.history.present;
  const { computation, isWorking } = useComputation(
    documents,
    surroundings,
    state.history.typingAt !== null,
    useSearchedPlans().solved,
  );
  useJobSearch(computation);
  const [eaveId, showEave] = useState<string | null>(documents.survey.eaves[0]?.id ?? null);
  const [walking, setWalking] = useState<{ readonly ref: string; readonly turn: number } | null>(null);
  const walkBack = useCallback(
    (ref: string) => setWalking((before) => ({ ref, turn: (before?.turn ?? 0) + 1 })),
    [],
  );
  const read = useCallback(() => editor.read().history.present, [editor]);
  const goTo = useGoTo({ jobId, read, prices: surroundings.prices, showEave });

  useEffect(() => {
    document.title = `${documents.info.name}, ${sections[section]} - Eavewright`;
  }, [documents.info.name, section]);
  useEffect(() => {
    const flush = (): void => editor.flush();
    const ask = (event: BeforeUnloadEvent): void => {
      editor.flush();
      if (!editor.isSaved() && editor.read().saving.kind !== 'saving') event.preventDefault();
    };
    window.addEventListener('pagehide', flush);
    window.addEventListener('beforeunload', ask);
    document.addEventListener('visibilitychange', flush);
    return () => {
      window.removeEventListener('pagehide', flush);
      window.removeEventListener('beforeunload', ask);
      document.removeEventListener('visibilitychange', flush);
    };
  }, [editor]);

  const canUndo = state.history.past.length > 0;
  const canRedo = state.history.future.length > 0;
  useCommand('edit.undo', editor.undo, canUndo);
  useCommand('edit.redo', editor.redo, canRedo);

  const eaveInView = documents.survey.eaves.some((eave) => eave.id === eaveId) ? eaveId : null;
  const job: Job = useMemo(
    () => ({
      jobId,
      editor,
      documents,
      surroundings,
      computation,
      isWorking,
      eaveId: eaveInView,
      showEave,
      walkBack,
      goTo,
    }),
    [jobId, editor, documents, surroundings, computation, isWorking, eaveInView, walkBack, goTo],
  );

  return (
    <JobContext.Provider value={job}>
      {isSection(params['section']) ? null : <Redirect to={`/jobs/${jobId}/survey`} replace />}
      <Screen
        title={documents.info.name}
        focusKey={jobId}
        beside={
          <>
            <span className="muted">{documents.info.customer.name}</span>
            <JobSaved saving={state.saving} openAgain={props.openAgain} />
          </>
        }
        actions={
          <>
            <IconButton
              label={canUndo ? `Undo: ${state.history.past.at(-1)?.what ?? ''}` : 'Nothing to undo'}
              icon={<Undo2 size={18} aria-hidden="true" />}
              isDisabled={!canUndo}
              onPress={editor.undo}
            />
            <IconButton
              label={canRedo ? `Redo: ${state.history.future.at(-1)?.what ?? ''}` : 'Nothing to redo'}
              icon={<Redo2 size={18} aria-hidden="true" />}
              isDisabled={!canRedo}
              onPress={editor.redo}
            />
            <span className="visually-hidden" role="status">
              {state.said}
            </span>
          </>
        }
        sections={
          <SectionLinks
            label="Sections of the job"
            links={Object.entries(sections).map(([id, label]) => ({ href: `/jobs/${jobId}/${id}`, label }))}
          />
        }
      >
        <div className={walking === null ? 'job-body' : 'job-body job-body-walking'}>
          <div className="job-main">
            <SectionHeading jobId={jobId} section={section} />
            <SectionView section={section} />
          </div>
          {walking === null ? null : (
            <WalkBackPanel
              key={walking.turn}
              startRef={walking.ref}
              onClose={() => setWalking(null)}
              onLeave={(route) => navigate(route)}
            />
          )}
        </div>
        <StandingLine />
      </Screen>
    </JobContext.Provider>
  );
}

function SectionView({ section }: { readonly section: SectionId }) {
  switch (section) {
    case 'survey':
      return <SurveySection />;
    case 'design':
      return <DesignSection />;
    case 'checks':
      return <ChecksSection />;
    case 'takeoff':
      return <TakeoffSection />;
    case 'cut-plan':
      return <CutPlanSection />;
    case 'estimate':
      return <EstimateSection />;
    case 'quote':
      return <QuoteSection />;
    case 'sheets':
      return <SheetsSection />;
    case 'cost':
      return <CostSection />;
    case 'billing':
      return <BillingSection />;
    default:
      return section satisfies never;
  }
}
