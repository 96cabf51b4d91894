import { X } from 'lucide-react';
import { useEffect, useSyncExternalStore } from 'react';
import { useLocation } from 'wouter';
import { IconButton } from './icon-button.tsx';

type Notice = {
  readonly id: number;
  readonly text: string;
  readonly tone: 'done' | 'problem';
  /** Where it was said. */
  readonly place: string;
};

const shownMs = 8000;
let notices: readonly Notice[] = [];
let nextId = 1;
let here = '';
const listeners = new Set<() => void>();

/**
 * Says in a line at the foot of the window what was done, or why it was not. A problem stays until it is put away or the
 * job or screen that it concerns is left.
 */
export function notify(text: string, tone: 'done' | 'problem' = 'done'): void {
  const notice: Notice = { id: nextId, text, tone, place: here };
  nextId += 1;
  change([...notices.filter((one) => one.text !== text).slice(-2), notice]);
  if (tone === 'done') window.setTimeout(() => dismiss(notice.id), shownMs);
}

/** The lines at the foot of the window, read aloud as they come. */
export function Notices() {
  const shown = useSyncExternalStore(subscribe, () => notices);
  const [location] = useLocation();
  const place = placeOf(location);
  useEffect(() => {
    here = place;
    return () => leaveBehind(place);
  }, [place]);
  return (
    <div className="notices" role="status" aria-live="polite">
      {shown.map((notice) => (
        <div key={notice.id} className={`notice notice-${notice.tone}`}>
          <span>
            {notice.tone === 'problem' ? <strong>Not done. </strong> : null}
            {notice.text}
          </span>
          <IconButton
            label="Put away"
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => dismiss(notice.id)}
          />
        </div>
      ))}
    </div>
  );
}

/** The screen, and on a job's screen the job: its sections are one place. */
function placeOf(location: string): string {
  return location.split('/').slice(0, 3).join('/');
}

function leaveBehind(place: string): void {
  change(notices.filter((one) => one.tone === 'done' || one.place !== place));
}

function dismiss(id: number): void {
  change(notices.filter((one) => one.id !== id));
}

function change(next: readonly Notice[]): void {
  notices = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
