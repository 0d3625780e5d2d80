import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { listenToDevice, type SensingWindow } from './deviceSenses.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

class Page extends EventTarget implements SensingWindow {
  readonly DeviceOrientationEvent: unknown;
  constructor(orientation: unknown) {
    super();
    this.DeviceOrientationEvent = orientation;
  }
  tell(kind: string, what: object): void {
    this.dispatchEvent(Object.assign(new Event(kind), what));
  }
}

test('a device with sensors tells angles and motion', () => {
  const page = new Page({});
  const senses = listenToDevice(page);
  expect(senses.state()).toBe('waiting');
  page.tell('deviceorientation', { alpha: 10, beta: 3, gamma: -4 });
  page.tell('devicemotion', {
    rotationRate: { alpha: 3, beta: 4, gamma: 0 },
    acceleration: { x: 0, y: 1, z: 0 },
  });
  expect(senses.state()).toBe('felt');
  expect(senses.angles()).toEqual({ beta: 3, gamma: -4 });
  expect(senses.motion()).toEqual({ turning: 5, pushing: 1 });
  senses.stop();
  page.tell('deviceorientation', { beta: 50, gamma: 0 });
  expect(senses.angles()).toEqual({ beta: 3, gamma: -4 });
});

test('a machine whose one event tells nothing has no sensor', () => {
  const page = new Page({});
  const senses = listenToDevice(page);
  page.tell('deviceorientation', { alpha: null, beta: null, gamma: null });
  page.tell('devicemotion', { rotationRate: null, acceleration: null });
  vi.advanceTimersByTime(2_500);
  expect(senses.state()).toBe('none');
  expect(senses.angles()).toBeNull();
  expect(senses.motion()).toEqual({ turning: null, pushing: null });
  expect(listenToDevice(new Page(undefined)).state()).toBe('none');
});

test.each([
  ['granted', 'waiting'],
  ['denied', 'refused'],
] as const)('consent by a press, %s', async (answer, state) => {
  const page = new Page({ requestPermission: () => Promise.resolve(answer) });
  const senses = listenToDevice(page);
  expect(senses.state()).toBe('press-needed');
  page.tell('deviceorientation', { beta: null, gamma: null });
  await senses.ask();
  expect(senses.state()).toBe(state);
  senses.stop();
});

test('a browser that knows consent and tells without it needs no press', () => {
  const page = new Page({ requestPermission: () => Promise.resolve('denied') });
  const senses = listenToDevice(page);
  page.tell('deviceorientation', { beta: 3, gamma: -4 });
  expect(senses.state()).toBe('felt');
  senses.stop();
});
