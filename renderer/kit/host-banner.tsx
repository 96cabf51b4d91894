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
            <strong>This window has no key to the Eavewright that is running.</strong> Use the window that
            opened when you started it, or the whole address that it printed. Anything here that is not saved
            yet can still be read and entered there.
          </>
        )}
      </Banner>
    </div>
  );
}
