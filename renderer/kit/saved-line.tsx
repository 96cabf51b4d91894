import { Check, CircleAlert, CloudOff, LoaderCircle } from 'lucide-react';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { SaveState } from '../host/autosave.ts';

/** The quiet line that says whether what is on the screen is on the disk. */
export function SavedLine({ state }: { readonly state: SaveState }) {
  return (
    <p className={`saved-line saved-${state.kind}`} role="status">
      {lineOf(state)}
    </p>
  );
}

function lineOf(state: SaveState) {
  switch (state.kind) {
    case 'saved':
      return (
        <>
          <Check size={14} aria-hidden="true" /> Saved
        </>
      );
    case 'saving':
      return (
        <>
          <LoaderCircle size={14} aria-hidden="true" /> Saving
        </>
      );
    case 'waiting':
      return (
        <>
          <CloudOff size={14} aria-hidden="true" /> Not saved yet: waiting for Eavewright
        </>
      );
    case 'problem':
      return (
        <>
          <CircleAlert size={14} aria-hidden="true" /> Not saved. {problemSentence(state.problem)}
        </>
      );
    default:
      return state satisfies never;
  }
}
