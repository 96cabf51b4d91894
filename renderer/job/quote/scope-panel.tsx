import { generatedScope, type ScopeParagraph } from '../../../core/documents/scope-wording.ts';
import type { ScopeText } from '../../../core/offer/offer-document.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { JobWords } from '../parts/words.tsx';
import { useOffered } from './offered.ts';

const list = 'design.offer.scopeTexts';

/** What is built, in words the client reads: written from the design, or by hand where the person wants it. */
export function ScopePanel() {
  const { documents } = useJob();
  const offered = useOffered();
  const paragraphs = offered === null ? [] : generatedScope(offered.input, offered.result);
  const texts = documents.design.offer.scopeTexts;
  const orphans = texts.flatMap((text, at) =>
    paragraphs.some(({ key }) => key === text.key) ? [] : [{ text, at }],
  );
  return (
    <Panel title="What we build">
      {paragraphs.map((paragraph) => (
        <Paragraph
          key={paragraph.key}
          paragraph={paragraph}
          at={texts.findIndex(({ key }) => key === paragraph.key)}
        />
      ))}
      {offered === null ? null : orphans.map(({ text, at }) => <Orphan key={text.key} text={text} at={at} />)}
      <JobWords path="design.scopeNote" label="Added below it" multiline rows={2} maxLength={5000} />
    </Panel>
  );
}

function Paragraph({ paragraph, at }: { readonly paragraph: ScopeParagraph; readonly at: number }) {
  const { editor, documents, goTo } = useJob();
  const { offer } = documents.design;
  const own = offer.scopeTexts[at];
  if (own === undefined)
    return (
      <div className="scope-paragraph">
        <p>{paragraph.text}</p>
        <Button
          tone="quiet"
          aria-label={`Write it yourself: ${paragraph.name}`}
          onPress={() => {
            const text: ScopeText = {
              key: paragraph.key,
              text: paragraph.text,
              writtenFrom: paragraph.text,
            };
            editor.change(`writing the scope of ${paragraph.name}`, (now) => appendTo(now, list, text));
            goTo(`${list}.${offer.scopeTexts.length}.text`);
          }}
        >
          Write it yourself
        </Button>
      </div>
    );
  const moved = own.writtenFrom !== paragraph.text;
  return (
    <div className="scope-paragraph">
      <JobWords
        path={`${list}.${at}.text`}
        label={`${paragraph.name}, in your words`}
        multiline
        rows={5}
        maxLength={4000}
        hint="Blank leaves the paragraph out."
      />
      {moved ? (
        <>
          <p className="field-care">The design has changed since you wrote this.</p>
          <p className="muted">The program would now write: {paragraph.text}</p>
        </>
      ) : null}
      <div className="quote-steps">
        <Button
          tone="quiet"
          aria-label={`Back to the generated words: ${paragraph.name}`}
          onPress={() =>
            editor.change(`back to the generated words of ${paragraph.name}`, (now) =>
              removeFrom(now, list, at),
            )
          }
        >
          Back to the generated words
        </Button>
        {moved ? (
          <Button
            tone="quiet"
            aria-label={`My words still hold: ${paragraph.name}`}
            onPress={() =>
              editor.change(`keeping the words of ${paragraph.name}`, (now) => ({
                ...now,
                design: {
                  ...now.design,
                  offer: {
                    ...now.design.offer,
                    scopeTexts: now.design.offer.scopeTexts.map((one, index) =>
                      index === at ? { ...one, writtenFrom: paragraph.text } : one,
                    ),
                  },
                },
              }))
            }
          >
            My words still hold
          </Button>
        ) : null}
      </div>
    </div>
  );
}

/** Words for an eave or rake that is not there any more: kept until the person takes them away. */
function Orphan({ text, at }: { readonly text: ScopeText; readonly at: number }) {
  const { editor } = useJob();
  return (
    <div className="scope-paragraph">
      <p className="field-care">
        Not printed, since what it is about is not in the design any more: {text.text}
      </p>
      <Button
        tone="quiet"
        aria-label={`Remove: ${text.text.slice(0, 40)}`}
        onPress={() => editor.change('removing words of the scope', (now) => removeFrom(now, list, at))}
      >
        Remove
      </Button>
    </div>
  );
}
