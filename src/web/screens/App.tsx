import { QueryClient } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import { Route, Switch, useRoute } from 'wouter';
import { FailedRequest } from '../client/shownFailure.ts';
import { Masthead } from '../parts/Masthead.tsx';
import { say } from '../words/say.ts';
import { ComparisonList } from './ComparisonList.tsx';
import { HeardLast } from './held/HeardLast.tsx';
import { KeepSending } from './held/KeepSending.tsx';
import { SlowLine } from './held/SlowLine.tsx';
import { NotFound } from './NotFound.tsx';
import { Doorway } from './phones/Doorway.tsx';
import { RackScreen } from './rack/RackScreen.tsx';
import { StoneRack } from './StoneRack.tsx';

// The lists must stand at once; all else comes when it is asked for.
const BatchList = lazy(() => import('./batches/BatchList.tsx'));
const BatchScreen = lazy(() => import('./batches/BatchScreen.tsx'));
const BenchScreen = lazy(() => import('./bench/BenchScreen.tsx'));
const ChangesScreen = lazy(() => import('./changes/ChangesScreen.tsx'));
const ComparisonScreen = lazy(() => import('./ComparisonScreen.tsx'));
const LeavingScreen = lazy(() => import('./rack/LeavingScreen.tsx'));
const InkList = lazy(() => import('./inks/InkList.tsx'));
const InkScreen = lazy(() => import('./inks/InkScreen.tsx'));
const EnterKit = lazy(() => import('./kit/EnterKit.tsx'));
const KeepingScreen = lazy(() => import('./keeping/KeepingScreen.tsx'));
const ColumnsScreen = lazy(() => import('./keeping/ColumnsScreen.tsx'));
const LabelScreen = lazy(() => import('./labels/LabelScreen.tsx'));
const ProtocolList = lazy(() => import('./protocols/ProtocolList.tsx'));
const BringProtocol = lazy(() => import('./protocols/BringProtocol.tsx'));
const ProtocolScreen = lazy(() => import('./protocols/ProtocolScreen.tsx'));
const KitList = lazy(() => import('./kit/KitList.tsx'));
const KitScreen = lazy(() => import('./kit/KitScreen.tsx'));
const MaterialList = lazy(() => import('./materials/MaterialList.tsx'));
const MaterialScreen = lazy(() => import('./materials/MaterialScreen.tsx'));
const EditionScreen = lazy(() => import('./editions/EditionScreen.tsx'));
const MixingIndex = lazy(() => import('./mixing/MixingIndex.tsx'));
const MixQuestion = lazy(() => import('./mixing/MixQuestion.tsx'));
const StudioScreen = lazy(() => import('./days/StudioScreen.tsx'));
const WeekScreen = lazy(() => import('./days/WeekScreen.tsx'));
const NewBatch = lazy(() => import('./batches/NewBatch.tsx'));
const NewComparison = lazy(() => import('./NewComparison.tsx'));
const NewMaterial = lazy(() => import('./materials/NewMaterial.tsx'));
const NewWork = lazy(() => import('./NewWork.tsx'));
const NewInk = lazy(() => import('./inks/NewInk.tsx'));
const PhonesScreen = lazy(() => import('./phones/PhonesScreen.tsx'));
const ProofsScreen = lazy(() => import('./proofs/ProofsScreen.tsx'));
const NewStone = lazy(() => import('./stone/NewStone.tsx'));
const NewReport = lazy(() => import('./papers/NewReport.tsx'));
const ReportList = lazy(() => import('./papers/ReportList.tsx'));
const ReportScreen = lazy(() => import('./papers/ReportScreen.tsx'));
const RoomIndex = lazy(() => import('./room/RoomIndex.tsx'));
const RoomQuestionScreen = lazy(() => import('./room/RoomQuestionScreen.tsx'));
const StoneScreen = lazy(() => import('./stone/StoneScreen.tsx'));
const TestStonesPage = lazy(() => import('./testStones/TestStonesPage.tsx'));
const NewTestStone = lazy(() => import('./testStones/NewTestStone.tsx'));
const PlanTest = lazy(() => import('./testStones/PlanTest.tsx'));
const TestStoneScreen = lazy(() => import('./testStones/TestStoneScreen.tsx'));
const KnownHolds = lazy(() => import('./known/KnownHolds.tsx'));
const TableList = lazy(() => import('./tables/TableList.tsx'));
const TableScreen = lazy(() => import('./tables/TableScreen.tsx'));
const WordsScreen = lazy(() => import('./words/WordsScreen.tsx'));
const WorkList = lazy(() => import('./WorkList.tsx'));
const WorkScreen = lazy(() => import('./WorkScreen.tsx'));

const queries = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 30_000,
      // A browser that holds itself to be offline must open what it holds, and say the rest at once.
      networkMode: 'always',
      refetchOnReconnect: true,
      // The server's own answer stands; only a broken line is worth trying again.
      retry: (count, thrown) => !(thrown instanceof FailedRequest) && count < 2,
    },
  },
});

/** The whole page: its head and the screen that the address asks for. */
export function App() {
  const [atBench] = useRoute('/bench/:id');
  const [atPress] = useRoute('/editions/:id/press');
  return (
    <Doorway queries={queries}>
      <KeepSending />
      {!atBench && !atPress && <Masthead />}
      <main id="main" tabIndex={-1}>
        {!atBench && !atPress && <HeardLast />}
        <SlowLine />
        <Suspense fallback={<p className="unseen">{say('Opening …')}</p>}>
          <Switch>
            <Route path="/">
              <RackScreen />
            </Route>
            <Route path="/leaving">
              <LeavingScreen />
            </Route>
            <Route path="/stones">
              <StoneRack />
            </Route>
            <Route path="/stones/new">
              <NewStone />
            </Route>
            <Route path="/stones/:id">{({ id }) => <StoneScreen key={id} id={id} />}</Route>
            <Route path="/works">
              <WorkList />
            </Route>
            <Route path="/works/new">
              <NewWork />
            </Route>
            <Route path="/works/:id/proofs/:page/:part">
              {({ id, page, part }) => <ProofsScreen key={id} id={id} page={page} part={part} />}
            </Route>
            <Route path="/works/:id/proofs/:page?">
              {({ id, page }) => <ProofsScreen key={id} id={id} page={page ?? ''} part="" />}
            </Route>
            <Route path="/works/:id/:view?">
              {({ id, view }) => <WorkScreen key={id} id={id} view={view ?? ''} />}
            </Route>
            <Route path="/bench/:id">{({ id }) => <BenchScreen key={id} id={id} />}</Route>
            <Route path="/changes/works/:id">
              {({ id }) => <ChangesScreen key={id} later={{ kind: 'works', id }} />}
            </Route>
            <Route path="/changes/runs/:id">
              {({ id }) => <ChangesScreen key={id} later={{ kind: 'runs', id }} />}
            </Route>
            <Route path="/editions/:id/:view?">
              {({ id, view }) => <EditionScreen key={id} id={id} view={view ?? ''} />}
            </Route>
            <Route path="/comparisons">
              <ComparisonList />
            </Route>
            <Route path="/new/*?">
              <NewComparison />
            </Route>
            <Route path="/comparisons/:id/:page?">
              {({ id, page }) => <ComparisonScreen key={id} id={id} page={page ?? ''} />}
            </Route>
            <Route path="/test-stones">
              <TestStonesPage />
            </Route>
            <Route path="/test-stones/new">
              <NewTestStone />
            </Route>
            <Route path="/test-stones/plan/:id?">{({ id }) => <PlanTest id={id ?? null} />}</Route>
            <Route path="/test-stones/:id/:view?">
              {({ id, view }) => <TestStoneScreen key={id} id={id} view={view ?? ''} />}
            </Route>
            <Route path="/mixing">
              <MixingIndex />
            </Route>
            <Route path="/mixing/:kind">{({ kind }) => <MixQuestion key={kind} kind={kind} />}</Route>
            <Route path="/batches">
              <BatchList />
            </Route>
            <Route path="/batches/new">
              <NewBatch />
            </Route>
            <Route path="/batches/:id">{({ id }) => <BatchScreen key={id} id={id} />}</Route>
            <Route path="/kit">
              <KitList />
            </Route>
            <Route path="/kit/new">
              <EnterKit />
            </Route>
            <Route path="/kit/:id">{({ id }) => <KitScreen key={id} id={id} />}</Route>
            <Route path="/materials">
              <MaterialList />
            </Route>
            <Route path="/materials/new">
              <NewMaterial />
            </Route>
            <Route path="/materials/:id">{({ id }) => <MaterialScreen key={id} id={id} />}</Route>
            <Route path="/reports">
              <ReportList />
            </Route>
            <Route path="/reports/new">
              <NewReport />
            </Route>
            <Route path="/reports/:id">{({ id }) => <ReportScreen key={id} id={id} />}</Route>
            <Route path="/keeping">
              <KeepingScreen />
            </Route>
            <Route path="/keeping/columns">
              <ColumnsScreen />
            </Route>
            <Route path="/protocols">
              <ProtocolList />
            </Route>
            <Route path="/protocols/new">
              <BringProtocol />
            </Route>
            <Route path="/protocols/:id">{({ id }) => <ProtocolScreen key={id} id={id} />}</Route>
            <Route path="/labels">
              <LabelScreen />
            </Route>
            <Route path="/room">
              <RoomIndex />
            </Route>
            <Route path="/room/:kind">{({ kind }) => <RoomQuestionScreen key={kind} kind={kind} />}</Route>
            <Route path="/phones">
              <PhonesScreen />
            </Route>
            <Route path="/join">
              <PhonesScreen />
            </Route>
            <Route path="/words">
              <WordsScreen />
            </Route>
            <Route path="/week">
              <WeekScreen />
            </Route>
            <Route path="/studio">
              <StudioScreen />
            </Route>
            <Route path="/inks">
              <InkList />
            </Route>
            <Route path="/inks/new">
              <NewInk />
            </Route>
            <Route path="/inks/:id">{({ id }) => <InkScreen key={id} id={id} />}</Route>
            <Route path="/known">
              <KnownHolds />
            </Route>
            <Route path="/tables">
              <TableList />
            </Route>
            <Route path="/tables/:id">{({ id }) => <TableScreen key={id} id={id} />}</Route>
            <Route path="/:list/:entry/*">
              {({ list, entry }) => <NotFound within={`/${list}/${entry}`} />}
            </Route>
            <Route>
              <NotFound />
            </Route>
          </Switch>
        </Suspense>
      </main>
    </Doorway>
  );
}
