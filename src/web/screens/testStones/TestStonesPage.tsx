import './PlanTest.css';
import { PlanLines } from './PlanLines.tsx';
import TestStoneList from './TestStoneList.tsx';

/** Test stones, and the planned tests that no stone was made of yet. */
export default function TestStonesPage() {
  return (
    <>
      <TestStoneList />
      <PlanLines />
    </>
  );
}
