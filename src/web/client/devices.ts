import type {
  Caller,
  DeviceEntry,
  LettingInCode,
  LettingInState,
  NetworkState,
} from '../../records/device.ts';
import { ask, withJson } from './ask.ts';

export const callerKey = ['caller'] as const;
export const networkKey = ['network'] as const;
export const devicesKey = ['devices'] as const;
export const lettingInKey = ['letting-in'] as const;

/** A server that says nothing for so long counts as out of reach, ms. */
const patienceMs = 4000;

/** Who this page is to the server. */
export function askCaller(): Promise<Caller> {
  return ask('/api/caller', { signal: AbortSignal.timeout(patienceMs) });
}

/** How phones reach the machine that runs the server; that machine alone may ask. */
export function askNetwork(): Promise<NetworkState> {
  return ask('/api/network');
}

/** All devices that were ever let in, newest first. */
export async function listDevices(): Promise<readonly DeviceEntry[]> {
  return (await ask<{ devices: readonly DeviceEntry[] }>('/api/devices')).devices;
}

/** A code that lets one phone in. */
export function openLettingIn(): Promise<LettingInCode> {
  return ask('/api/letting-in', { method: 'POST' });
}

/** What became of the last code. */
export function readLettingIn(): Promise<LettingInState> {
  return ask('/api/letting-in');
}

export function endLettingIn(): Promise<void> {
  return ask('/api/letting-in', { method: 'DELETE' });
}

/** Lets this page's device in; the answer brings its cookie. */
export function joinWith(code: string): Promise<Caller> {
  return ask('/api/devices', withJson('POST', { code }));
}

export function renameDevice(id: string, name: string): Promise<DeviceEntry> {
  return ask(`/api/devices/${id}/name`, withJson('PUT', { name }));
}

/** Shuts a device out for good. */
export function shutOut(id: string): Promise<DeviceEntry> {
  return ask(`/api/devices/${id}/shut-out`, { method: 'POST' });
}
