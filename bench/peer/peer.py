#!/usr/bin/python3
"""
An independent opponent: the same job on the same pictures with Debian's python3-opencv and numpy, two threads.

    /usr/bin/python3 bench/peer/peer.py PAIR_FOLDER OUT_FOLDER

reads a pair in the shared form (arguments.json with corners, zones.json, chips.json) and writes peer.json (verdict,
registration samples, zones, seconds by stage, peak memory) and lost.png, filled.png, scum.png at 4 px per mm.
It shares no code with the engine; thresholds are the project's definitions.
"""

import json
import os
import resource
import sys
import time

os.environ.setdefault("OMP_NUM_THREADS", "2")
os.environ.setdefault("OPENBLAS_NUM_THREADS", "2")

import cv2  # noqa: E402
import numpy as np  # noqa: E402

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from pictures import linear_table, plane_map_scale, read_codes, Frame, corner_map  # noqa: E402
from registration import register  # noqa: E402
from tone import change_maps, measure_tone  # noqa: E402

cv2.setNumThreads(2)


class Pair:
    def __init__(self, folder):
        read = lambda name: json.load(open(os.path.join(folder, name)))
        given = read("arguments.json")
        self.size_mm = [float(v) for v in given["size"].split("x")]
        self.stone = read_codes(os.path.join(folder, given["stone"]))
        self.proof = read_codes(os.path.join(folder, given["proof"]))
        self.stone_table = linear_table(self.stone.dtype)
        self.proof_table = linear_table(self.proof.dtype)
        if "stone-corners" not in given or "proof-corners" not in given:
            raise SystemExit("the opponent needs corners on both photographs")
        self.stone_corners = given["stone-corners"]
        self.proof_corners = given["proof-corners"]
        self.zones = read(given["zones"]) if "zones" in given else []
        self.chips = read(given["chips"]) if "chips" in given else []
        unit = Frame(self.size_mm, 0, 1)
        self.px_per_mm = plane_map_scale(corner_map(self.stone_corners, self.size_mm), unit)


def main(folder, out):
    os.makedirs(out, exist_ok=True)
    stages, started = {}, time.perf_counter()

    def done(stage):
        nonlocal started
        now = time.perf_counter()
        stages[stage] = now - started
        started = now

    pair = Pair(folder)
    done("reading")
    found = register(pair)
    done("matching")
    result = {"verdict": found["verdict"], "zones": [], "registration": None}
    if found["verdict"] == "ok":
        tone = measure_tone(pair, found)
        done("tones")
        for name, plane in change_maps(tone).items():
            cv2.imwrite(os.path.join(out, f"{name}.png"), plane)
        w, h = pair.size_mm
        gx, gy = np.meshgrid(np.linspace(0, w, 25), np.linspace(0, h, 25))
        mm = np.column_stack([gx.ravel(), gy.ravel()])
        stone_px, proof_px = found["stone_map"].points(mm), found["proof_map"].points(mm)
        samples = [{"stoneMm": list(a), "stonePx": list(b), "proofPx": list(c)} for a, b, c in zip(mm, stone_px, proof_px)]
        result["registration"] = {"residualMm": found["residual"], "samples": samples}
        result["zones"], result["solid"] = tone["zones"], tone["solid"]
        done("maps")
    result["seconds"] = stages
    result["peakMegabytes"] = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    json.dump(result, open(os.path.join(out, "peer.json"), "w"))


if __name__ == "__main__":
    main(*sys.argv[1:3])
