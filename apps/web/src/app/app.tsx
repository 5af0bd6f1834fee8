import { lazy, Suspense } from 'react';
import { Route, Switch, useLocation } from 'wouter';
import type { GardenStore } from '../data/garden-store.ts';
import { NotFound } from '../data/garden-store.ts';
import { StoreProvider } from '../data/store-context.tsx';
import { Failure } from '../kit/failure.tsx';
import { Loading } from '../kit/loading.tsx';
import { ToastProvider } from '../kit/toast.tsx';
import { Gardens } from '../screens/gardens/gardens.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { Frame } from './frame.tsx';
import { UnitsProvider } from './units.tsx';

// The engine comes with the garden's screens, not with the first view.
const GardenScreens = lazy(() => import('./garden-screens.tsx'));

export function App({ store }: { readonly store: GardenStore }) {
  const [location] = useLocation();
  return (
    <StoreProvider value={store}>
      <UnitsProvider>
        <ToastProvider>
          <ErrorBoundary at={location}>
            <Switch>
              <Route path="/">
                <Frame>
                  <Gardens />
                </Frame>
              </Route>
              <Route path="/g/:garden" nest>
                {({ garden }) => (
                  <Suspense
                    fallback={
                      <Frame>
                        <Loading />
                      </Frame>
                    }
                  >
                    <GardenScreens key={garden} garden={garden} />
                  </Suspense>
                )}
              </Route>
              <Route>
                <Frame>
                  <Failure error={new NotFound(location)} />
                </Frame>
              </Route>
            </Switch>
          </ErrorBoundary>
        </ToastProvider>
      </UnitsProvider>
    </StoreProvider>
  );
}
