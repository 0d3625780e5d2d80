import { expect, it } from 'vitest';
import type { Point } from '../../science/geometry/point.ts';
import { BoardHand, type BoardUser } from './boardHand.ts';
import { toStoneMm } from './linkedView.ts';

/** A user that grips everything, or nothing, and writes down what it is told. */
function userThat(grips: boolean) {
  const told: string[] = [];
  const at = ([x, y]: Point) => `${Math.round(x)},${Math.round(y)}`;
  const user: BoardUser = {
    press: (mm) => {
      told.push(`press ${at(mm)}`);
      return grips;
    },
    drag: (mm) => told.push(`drag ${at(mm)}`),
    release: (_, dropped) => told.push(dropped ? 'release' : 'give up'),
    click: (mm) => told.push(`click ${at(mm)}`),
    hover: () => {},
  };
  return { told, user };
}

function boardFor(user: BoardUser): BoardHand {
  const board = new BoardHand([400, 300], () => {});
  board.resize([456, 356]);
  board.user = user;
  return board;
}

it('shows the whole stone and tells places in its millimetres', () => {
  const { told, user } = userThat(true);
  const board = boardFor(user);
  expect(board.view).toEqual({ pxPerMm: 1, offsetPx: [28, 28] });
  board.down(1, [128, 78], false, true);
  board.move(1, [148, 78], false);
  board.up(1);
  expect(told).toEqual(['press 100,50', 'drag 120,50', 'release']);
});

it('takes a press that hardly moves for a click, and does not move the view for it', () => {
  const { told, user } = userThat(false);
  const board = boardFor(user);
  board.down(1, [128, 78], true, true);
  board.move(1, [131, 79], true);
  board.up(1);
  expect(told).toEqual(['press 100,50', 'click 100,50']);
  expect(board.view.offsetPx).toEqual([28, 28]);
});

it('moves the view where nothing is gripped', () => {
  const { told, user } = userThat(false);
  const board = boardFor(user);
  board.down(1, [128, 78], false, true);
  board.move(1, [158, 98], false);
  board.up(1);
  expect(told).toEqual(['press 100,50']);
  expect(board.view.offsetPx).toEqual([58, 48]);
});

it('gives a grip up when a second finger comes, and comes closer about what lies between', () => {
  const { told, user } = userThat(true);
  const board = boardFor(user);
  board.down(1, [200, 200], true, true);
  board.down(2, [260, 200], true, true);
  const between = toStoneMm(board.view, [230, 200]);
  board.move(2, [320, 200], true);
  board.move(1, [140, 200], true);
  board.up(1);
  board.up(2);
  expect(told).toEqual([`press 172,172`, 'give up']);
  expect(board.view.pxPerMm).toBeGreaterThan(2.5);
  const now = toStoneMm(board.view, [230, 200]);
  expect(Math.hypot(now[0] - between[0], now[1] - between[1])).toBeLessThan(3);
});

it('keeps what is closer when the window changes, and brings a place into sight', () => {
  const board = boardFor(userThat(false).user);
  board.zoom(4);
  const before = board.view;
  board.resize([500, 400]);
  expect(board.view).toBe(before);
  board.show([5, 5]);
  const [x, y] = toStoneMm(board.view, [28, 28]);
  expect([Math.round(x), Math.round(y)]).toEqual([5, 5]);
});
