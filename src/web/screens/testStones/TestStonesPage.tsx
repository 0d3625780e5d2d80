import './PlanTest.css';
import { PlanLines } from './PlanLines.tsx';
import TestStoneList from './TestStoneList.tsx';

/** The planned tests that no stone was made of yet, which come next, above the test stones. */
export default function TestStonesPage() {
  return <TestStoneList planned={<PlanLines />} />;
}
