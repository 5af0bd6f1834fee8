import { type ComponentType, lazy, Suspense, useCallback, useEffect } from 'react';
import { Route, Switch, useLocation } from 'wouter';
import { NotFound } from '../data/garden-store.ts';
import { useStore } from '../data/store-context.tsx';
import { Failure } from '../kit/failure.tsx';
import { Loading } from '../kit/loading.tsx';
import { label } from '../words/label.ts';
import { Checking } from './checking.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { Frame } from './frame.tsx';
import { GardenProvider } from './garden-context.tsx';
import { dayScreens, type Screen, screens } from './screens.ts';
import { useAsync } from './use-async.ts';

type Drawn = Screen & { readonly Body: ComponentType };
const drawn = (list: readonly Screen[]): readonly Drawn[] =>
  list.map((screen) => ({ ...screen, Body: lazy(screen.load) }));
const ofGarden = drawn(screens);
const own = new Set(dayScreens.map(({ path }) => path));
/** A soil day has screens of its own, and shares those about one place. */
const ofDay = drawn([...dayScreens, ...screens.filter(({ path }) => !own.has(path))]);

/** All screens of one garden, with its record fetched once for them all. */
export default function GardenScreens({ garden }: { readonly garden: string }) {
  const store = useStore();
  const load = useCallback(() => store.document(garden), [store, garden]);
  const fetched = useAsync(load);
  const [location] = useLocation();
  if (fetched.state === 'loading')
    return (
      <Frame>
        <Loading />
      </Frame>
    );
  if (fetched.state === 'failed')
    return (
      <Frame>
        <Failure error={fetched.error} retry={() => void fetched.reload()} />
      </Frame>
    );
  const { document } = fetched.value;
  const isDay = document.soilDay !== undefined;
  return (
    <GardenProvider record={fetched.value} reload={fetched.reload}>
      <Frame garden={document.garden} ofGarden={document.units} bar={isDay ? dayScreens : screens}>
        <Checking />
        <ErrorBoundary at={location}>
          <Suspense fallback={<Loading code="web.working" />}>
            <Switch>
              {(isDay ? ofDay : ofGarden).map(({ path, title, Body }) => (
                <Route key={path} path={path}>
                  <Titled title={label('web.title', { screen: label(title) })} />
                  <Body />
                </Route>
              ))}
              <Route>
                <Failure error={new NotFound(location)} />
              </Route>
            </Switch>
          </Suspense>
        </ErrorBoundary>
      </Frame>
    </GardenProvider>
  );
}

/** Names the page, and puts a screen reader at the start of a newly opened one. */
function Titled({ title }: { readonly title: string }) {
  const [location] = useLocation();
  // biome-ignore lint/correctness/useExhaustiveDependencies: every new address is a newly opened screen
  useEffect(() => {
    document.title = title;
    window.scrollTo(0, 0);
    if (document.activeElement !== document.body) document.getElementById('content')?.focus({ preventScroll: true });
  }, [title, location]);
  return null;
}
