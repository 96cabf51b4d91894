import { QueryClientProvider } from '@tanstack/react-query';
import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Redirect, Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { listenForKeys } from './commands/command-keys.ts';
import { CommandPalette } from './commands/command-palette.tsx';
import { FrameCommands } from './commands/frame-commands.tsx';
import { askBeforeLeaving } from './host/ask-before-leaving.ts';
import { keepAnswersFresh, queryClient } from './host/queries.ts';
import { startTheme } from './host/theme.ts';
import { JobWorkspace } from './job/job-workspace.tsx';
import { ErrorBoundary } from './kit/error-boundary.tsx';
import { Frame } from './kit/frame.tsx';
import { Notices } from './kit/notices.tsx';
import { JobsScreen } from './screens/jobs/jobs-screen.tsx';
import { ShopGate } from './screens/data/shop-gate.tsx';
import { MoneyScreen } from './screens/money/money-screen.tsx';
import { NotFoundScreen } from './screens/not-found-screen.tsx';
import { HistoryScreen } from './screens/prices/history/history-screen.tsx';
import { ImportScreen } from './screens/prices/import/import-screen.tsx';
import { PricesScreen } from './screens/prices/prices-screen.tsx';
import { SettingsScreen } from './screens/settings/settings-screen.tsx';
import { StockScreen } from './screens/stock/stock-screen.tsx';

/** The address stands in the fragment, so that the host serves one page and no path of a job reaches a log. */
const addressInFragment = { hook: useHashLocation };

/** The whole program in the window: the frame, the screen by address, and what floats above them. */
export function App() {
  useEffect(() => {
    startTheme();
    const stops = [listenForKeys(window), keepAnswersFresh(), askBeforeLeaving()];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  return (
    <QueryClientProvider client={queryClient}>
      <I18nProvider locale="en-US">
        <Router {...addressInFragment}>
          <FrameCommands />
          <Frame>
            <ErrorBoundary>
              <ShopGate>
                <Switch>
                  <Route path="/">
                    <Redirect to="/jobs" replace />
                  </Route>
                  <Route path="/jobs">
                    <JobsScreen />
                  </Route>
                  <Route path="/jobs/:id/:section?">
                    {(params) => <JobWorkspace key={params.id} jobId={params.id} />}
                  </Route>
                  <Route path="/prices-over-time/:itemId?">
                    {(params) => <HistoryScreen itemId={params.itemId} />}
                  </Route>
                  <Route path="/prices-stock">
                    <StockScreen />
                  </Route>
                  <Route path="/prices-import">
                    <ImportScreen />
                  </Route>
                  <Route path="/prices/:itemId?">{(params) => <PricesScreen itemId={params.itemId} />}</Route>
                  <Route path="/money/:part?">{(params) => <MoneyScreen part={params.part} />}</Route>
                  <Route path="/settings/:part?">{(params) => <SettingsScreen part={params.part} />}</Route>
                  <Route>
                    <NotFoundScreen />
                  </Route>
                </Switch>
              </ShopGate>
            </ErrorBoundary>
          </Frame>
          <CommandPalette />
          <Notices />
        </Router>
      </I18nProvider>
    </QueryClientProvider>
  );
}
