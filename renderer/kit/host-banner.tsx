import { useConnection } from '../host/connection.ts';
import { Banner } from './banner.tsx';

/** Says above every screen that the host does not answer, what is kept, and what to do. */
export function HostBanner() {
  const connection = useConnection();
  if (connection === 'here') return null;
  return (
    <div className="frame-banner">
      <Banner tone="caution" isLive>
        {connection === 'no-answer' ? (
          <>
            <strong>Eavewright does not answer.</strong> What you typed stays in this window and is saved as
            soon as it answers. Leave this window open. If you closed the program, start it again: it opens a
            new window with everything that was saved.
          </>
        ) : (
          <>
            <strong>This window belongs to an earlier start of Eavewright.</strong> Use the window that opened
            with the last start, or the address that it printed. What still stands here unsaved can be read
            and typed over there.
          </>
        )}
      </Banner>
    </div>
  );
}
