"""Print onto stone: eight starts judged by tiles, a robust homography, then a kriged stretch from finer tiles."""

import cv2
import numpy as np

from pictures import Frame, PlaneMap, corner_map, rectify


def flattened(light, px_per_mm):
    """Local contrast: log light less its neighbourhood of 6 mm, unknown places filled with nothing."""
    known = np.isfinite(light)
    log = np.log(np.where(known, np.maximum(light, 1e-3), 1))
    weight = known.astype(np.float32)
    sigma = 6 * px_per_mm
    mean = cv2.GaussianBlur(log * weight, (0, 0), sigma) / np.maximum(cv2.GaussianBlur(weight, (0, 0), sigma), 1e-3)
    return np.where(known, np.maximum(log, -4) - mean, 0).astype(np.float32)


def tile_shifts(first, second, size, centres):
    """
    Shift of `second` against `first` at tile centres (raster px), by partly whitened correlation
    (magnitude to the power 0.75), low-passed, with a parabola through the logarithm of the peak.
    Returns shifts (n, 2), peak over the rest (n,), and the energy of the first picture's tile (n,).
    """
    window = np.outer(np.hanning(size), np.hanning(size)).astype(np.float32)
    fy, fx = np.fft.fftfreq(size)[:, None], np.fft.rfftfreq(size)[None, :]
    low_pass = np.exp(-((fx**2 + fy**2) / (2 * 0.16**2))).astype(np.float32)
    shifts, sharpness, energy = [], [], []
    half = size // 2
    for start in range(0, len(centres), 64):
        batch = centres[start : start + 64]
        a = np.stack([first[y - half : y - half + size, x - half : x - half + size] for x, y in batch])
        b = np.stack([second[y - half : y - half + size, x - half : x - half + size] for x, y in batch])
        deviation = np.minimum(a.std(axis=(1, 2)), b.std(axis=(1, 2)))
        a = (a - a.mean(axis=(1, 2), keepdims=True)) * window
        b = (b - b.mean(axis=(1, 2), keepdims=True)) * window
        cross = np.conj(np.fft.rfft2(a)) * np.fft.rfft2(b)
        cross *= low_pass / np.maximum(np.abs(cross), 1e-9) ** 0.75
        surface = np.fft.irfft2(cross, s=(size, size))
        for k in range(len(batch)):
            plane = surface[k]
            py, px = np.unravel_index(np.argmax(plane), plane.shape)
            shifts.append([peak_offset(plane, py, px, 1, size), peak_offset(plane, py, px, 0, size)])
            sharpness.append(plane[py, px] / (plane.std() + 1e-12))
        energy.extend(deviation)
    return np.array(shifts), np.array(sharpness), np.array(energy)


def peak_offset(plane, py, px, axis, size):
    take = lambda d: plane[(py + d) % size, px] if axis == 0 else plane[py, (px + d) % size]
    values = np.array([take(-1), take(0), take(1)])
    place = py if axis == 0 else px
    place = place - size if place > size // 2 else place
    if values.min() <= 0:
        return float(place)
    before, here, after = np.log(values)
    curve = before - 2 * here + after
    return place + (0.5 * (before - after) / curve if curve < 0 else 0.0)


def tile_centres(frame, size, step_mm, inside_mm):
    step = int(round(step_mm * frame.px_per_mm))
    half = size // 2
    low = np.ceil(frame.to_px([inside_mm[0]] * 2)[0])
    xs = np.arange(max(half, int(low)), frame.width - half, step)
    ys = np.arange(max(half, int(low)), frame.height - half, step)
    gx, gy = np.meshgrid(xs, ys)
    return np.column_stack([gx.ravel(), gy.ravel()])


def measure_tiles(pair, stone_map, proof_map, px_per_mm, tile_mm, step_mm, sharp=6.0, most_mm=None):
    """Pairs of stone mm and true proof px from tiles at one scale; tiles without drawing are left out."""
    frame = Frame(pair.size_mm, 8, px_per_mm)
    size = int(2 ** np.round(np.log2(tile_mm * px_per_mm)))
    stone = flattened(rectify(pair.stone, stone_map, frame, pair.stone_table, True), px_per_mm)
    proof = flattened(rectify(pair.proof, proof_map, frame, pair.proof_table, True), px_per_mm)
    centres = tile_centres(frame, size, step_mm, (0, 0))
    shifts, sharpness, energy = tile_shifts(stone, proof, size, centres)
    far = np.hypot(*shifts.T) > (most_mm * px_per_mm if most_mm else size / 3)
    good = (sharpness > sharp) & (energy > 0.05) & ~far
    mm = (centres + 0.5) / px_per_mm + frame.origin
    return mm[good], mm[good] + shifts[good] / px_per_mm, float(good.mean()), float(sharpness[good].sum())


def agreement(pair, stone_map, proof_map):
    """How well tiles agree under one start: peaks whose shifts follow one affine map."""
    mm, moved, _, _ = measure_tiles(pair, stone_map, proof_map, 2, 64, 16, sharp=6.5, most_mm=15)
    if len(mm) < 6:
        return 0, None
    # A millimetre: a neighbouring stitch of a pattern is further off than that.
    affine, inliers = cv2.estimateAffine2D(mm, moved, ransacReprojThreshold=1.0, confidence=0.999, maxIters=5000)
    if inliers is None or np.abs(affine[:, :2] - np.eye(2)).max() > 0.06:
        return 0, None
    return int(inliers.sum()), (mm, moved, inliers.ravel() > 0)


def register(pair):
    """Verdict, map from stone mm to proof px, and the residual on held-out tiles."""
    stone_map = corner_map(pair.stone_corners, pair.size_mm)
    given = list(pair.proof_corners)
    starts = []
    for mirrored in (False, True):
        order = given if not mirrored else [given[1], given[0], given[3], given[2]]
        for turn in range(4):
            starts.append(order[turn:] + order[:turn])
    scores = []
    for corners in starts:
        count, matched = agreement(pair, stone_map, corner_map(corners, pair.size_mm))
        scores.append((count, corners, matched))
    scores.sort(key=lambda entry: -entry[0])
    if scores[0][0] < 12 or scores[0][0] < 2 * scores[1][0]:
        return {"verdict": "no-match"}
    corners = scores[0][1]
    turned = np.cross(np.subtract(corners[1], corners[0]), np.subtract(corners[3], corners[0]))
    if turned > 0:
        return {"verdict": "unmirrored"}
    proof_map = corner_map(corners, pair.size_mm)
    for px_per_mm, tile_mm, step_mm in ((2, 32, 12), (3, 24, 12)):
        mm, moved, _, _ = measure_tiles(pair, stone_map, proof_map, px_per_mm, tile_mm, step_mm)
        homography, _ = cv2.findHomography(mm, proof_map.points(moved), cv2.RANSAC, 3.0)
        proof_map = PlaneMap(homography)
    finest = float(np.clip(np.floor(pair.px_per_mm), 3, 8))
    residual = None
    for px_per_mm, tile_mm, step_mm in ((4, 16, 10), (finest, 12, 8)):
        mm, moved, _, _ = measure_tiles(pair, stone_map, proof_map, px_per_mm, tile_mm, step_mm, most_mm=2)
        back = np.column_stack([proof_map.points(moved), np.ones(len(moved))]) @ np.linalg.inv(proof_map.homography).T
        wanted = back[:, :2] / back[:, 2:] - mm
        keep = robust(mm, wanted)
        stretch = Kriging(mm[keep], wanted[keep])
        residual = stretch.left_out
        proof_map = PlaneMap(proof_map.homography, stretch)
    return {"verdict": "ok", "stone_map": stone_map, "proof_map": proof_map, "residual": residual}


def robust(mm, wanted):
    """Tiles whose displacement fits their 12 neighbours' median."""
    distance = ((mm[:, None] - mm[None]) ** 2).sum(-1)
    near = np.argsort(distance, axis=1)[:, 1:13]
    off = np.hypot(*(wanted - np.median(wanted[near], axis=1)).T)
    return off < max(0.05, 4 * 1.4826 * np.median(off))


class Kriging:
    """Affine plus a Gaussian process (Matern 5/2) through tile displacements; length and noise by likelihood."""

    def __init__(self, mm, wanted):
        self.mm = mm[:: max(1, len(mm) // 900)]
        wanted = wanted[:: max(1, len(wanted) // 900)]
        self.trend = np.linalg.lstsq(self.base(self.mm), wanted, rcond=None)[0]
        rest = wanted - self.base(self.mm) @ self.trend
        # Length and noise are chosen on a quarter of the tiles, which is enough for two numbers.
        some, part = self.mm[::4], rest[::4]
        best = None
        for length in (50, 80, 130, 210):
            for noise in (0.1, 0.3, 1.0):
                factor = np.linalg.cholesky(self.kernel(some, some, length) + noise * np.eye(len(some)))
                variance = (np.linalg.solve(factor, part) ** 2).mean()
                likelihood = -len(part) * np.log(variance + 1e-15) - 2 * np.log(np.diag(factor)).sum()
                if best is None or likelihood > best[0]:
                    best = (likelihood, length, noise)
        _, self.length, noise = best
        inverse = np.linalg.inv(self.kernel(self.mm, self.mm, self.length) + noise * np.eye(len(self.mm)))
        self.weights = inverse @ rest
        left = np.hypot(*(self.weights / np.diag(inverse)[:, None]).T)
        self.left_out = {"median": float(np.median(left)), "p90": float(np.quantile(left, 0.9))}

    @staticmethod
    def base(points):
        return np.column_stack([np.ones(len(points)), points / 200])

    @staticmethod
    def kernel(a, b, length):
        r = np.sqrt(5) * np.sqrt(np.maximum(((a[:, None] - b[None]) ** 2).sum(-1), 0)) / length
        return (1 + r + r * r / 3) * np.exp(-r)

    def __call__(self, points):
        result = np.empty((len(points), 2))
        for start in range(0, len(points), 4000):
            part = points[start : start + 4000]
            result[start : start + 4000] = self.base(part) @ self.trend + self.kernel(part, self.mm, self.length) @ self.weights
        return result
