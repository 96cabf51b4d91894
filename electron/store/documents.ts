import { z } from 'zod';
import { designSchema, type Design } from '../../core/eave/design-document.ts';
import { surveySchema, type Survey } from '../../core/survey/survey-document.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';
import type { DocumentKind } from './schema.ts';

/** Raw text of entries that do not parse yet, by dotted path. */
export type Drafts = Readonly<Record<string, string>>;

export type Documents = { readonly survey: Survey; readonly design: Design; readonly drafts: Drafts };

const draftsSchema = z.record(z.string(), z.string());

/** Thrown where a stored document does not fit its schema: the file was changed outside of the program. */
export class DocumentDamaged extends Error {
  readonly kind: string;
  constructor(kind: string) {
    super(`a stored ${kind} does not fit its schema`);
    this.kind = kind;
  }
}

/** The documents of a job, checked as they are read. */
export function getDocuments(db: ReadableDb, jobId: string): Documents {
  const texts = new Map(
    db
      .rows(query.selectFrom('documents').select(['kind', 'json']).where('job_id', '=', jobId))
      .map(({ kind, json }) => [kind, json]),
  );
  return {
    survey: readDocument('survey', surveySchema, texts.get('survey')),
    design: readDocument('design', designSchema, texts.get('design')),
    drafts: readDocument('drafts', draftsSchema, texts.get('drafts') ?? '{}'),
  };
}

/** Writes the documents that are given and leaves the others; each is checked once more on its way in. */
export function putDocuments(
  db: WritableDb,
  jobId: string,
  documents: { readonly [Kind in keyof Documents]?: Documents[Kind] | undefined },
): void {
  if (documents.survey !== undefined) put(db, jobId, 'survey', surveySchema.parse(documents.survey));
  if (documents.design !== undefined) put(db, jobId, 'design', designSchema.parse(documents.design));
  if (documents.drafts !== undefined) put(db, jobId, 'drafts', draftsSchema.parse(documents.drafts));
}

function put(db: WritableDb, jobId: string, kind: DocumentKind, document: object): void {
  const version = 'version' in document && typeof document.version === 'number' ? document.version : 1;
  const json = JSON.stringify(document);
  db.run(
    query
      .insertInto('documents')
      .values({ job_id: jobId, kind, version, json })
      .onConflict((conflict) => conflict.columns(['job_id', 'kind']).doUpdateSet({ version, json })),
  );
}

function readDocument<S extends z.ZodType>(
  kind: DocumentKind,
  schema: S,
  text: string | undefined,
): z.output<S> {
  if (text === undefined) throw new DocumentDamaged(kind);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new DocumentDamaged(kind);
  }
  const read = schema.safeParse(value);
  if (!read.success) throw new DocumentDamaged(kind);
  return read.data;
}
