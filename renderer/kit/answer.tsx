import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { problemSentence } from '../../core/problems/sentence.ts';
import { problemOf } from '../host/queries.ts';
import { Banner } from './banner.tsx';

/** Shows what the host answered, or why there is nothing to show. The last good answer stays while a new one is asked. */
export function Answer<T>(props: {
  readonly query: UseQueryResult<T>;
  readonly children: (value: T) => ReactNode;
}) {
  const { query, children } = props;
  const problem = problemOf(query.error);
  return (
    <>
      {problem === undefined ? null : <Banner tone="problem">{problemSentence(problem)}</Banner>}
      {query.data === undefined ? null : children(query.data)}
    </>
  );
}
