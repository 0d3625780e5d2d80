"""Ground, darkness, coverage, zones and maps of a registered pair."""

import cv2
import numpy as np

from pictures import Frame, rectify

SCALE = 4.0
BORDER_MM = 8
CELL_MM = 2.0


def chip_curve(pair, photo, codes, table):
    """With chips: linear light corrected by a quadratic through the chips' means (least squares). Else unchanged."""
    chips = [chip for chip in pair.chips if chip["photo"] == photo]
    if len(chips) < 3:
        return table
    seen, known = [], []
    for chip in chips:
        polygon = np.array(chip["polygonPx"]) - 0.5
        mask = np.zeros(codes.shape[:2], np.uint8)
        cv2.fillConvexPoly(mask, np.round(polygon).astype(np.int32), 1)
        seen.append(table[codes[mask > 0]].mean())
        known.append(chip["reflectance"])
    seen, known = np.array(seen), np.array(known)
    weight = 1 / (known + 0.05)
    design = np.column_stack([np.ones_like(seen), seen, seen**2, seen**3])
    coefficients = np.linalg.lstsq(design * weight[:, None], known * weight, rcond=None)[0]
    corrected = sum(c * table.astype(float) ** k for k, c in enumerate(coefficients))
    return np.maximum(np.maximum.accumulate(corrected), 1e-4).astype(np.float32)


def cell_means(plane, cell):
    height, width = plane.shape[0] // cell * cell, plane.shape[1] // cell * cell
    return plane[:height, :width].reshape(height // cell, cell, width // cell, cell).mean(axis=(1, 3))


def brightest_by_block(grey, usable):
    """The brightest fifth of each of 6 x 6 blocks, so that no side of an unevenly lit picture is left out."""
    bright = np.zeros(grey.shape, bool)
    for rows in np.array_split(np.arange(grey.shape[0]), 6):
        for columns in np.array_split(np.arange(grey.shape[1]), 6):
            block = np.ix_(rows, columns)
            if usable[block].sum() > 10:
                bright[block] = usable[block] & (grey[block] >= np.quantile(grey[block][usable[block]], 0.8))
    return bright


def ground_surface(light, allowed, cell):
    """Quadratic in log light through bare cells, then their smoothed residual; full raster, one channel a time."""
    cells = np.stack([cell_means(light[:, :, c], cell) for c in range(3)], -1)
    grey = np.log(np.maximum(cells.mean(-1), 1e-4))
    rows, columns = grey.shape
    gx, gy = np.meshgrid(np.linspace(-1, 1, columns), np.linspace(-1, 1, rows))
    design = np.stack([np.ones_like(gx), gx, gy, gx * gx, gx * gy, gy * gy], -1)
    usable = np.isfinite(grey) & cv2.resize(allowed.astype(np.uint8), (columns, rows), interpolation=cv2.INTER_NEAREST).astype(bool)
    bare = brightest_by_block(grey, usable)
    for width in (0.15, 0.08, 0.05, 0.03, 0.03, 0.03):
        fit = np.linalg.lstsq(design[bare], grey[bare], rcond=None)[0]
        bare = usable & (np.abs(grey - design @ fit) < width)
    grounds = []
    weight = cv2.GaussianBlur(bare.astype(np.float32), (0, 0), 5)
    for c in range(3):
        log = np.log(np.maximum(cells[:, :, c], 1e-4))
        fit = np.linalg.lstsq(design[bare], log[bare], rcond=None)[0]
        off = np.where(bare, log - design @ fit, 0).astype(np.float32)
        local = cv2.GaussianBlur(off, (0, 0), 5) / (weight + 0.01)
        surface = np.exp(design @ fit + local).astype(np.float32)
        grounds.append(cv2.resize(surface, (light.shape[1], light.shape[0]), interpolation=cv2.INTER_LINEAR))
    return np.stack(grounds, -1), bare


def outside_zones(pair, frame):
    """Where no zone says that something was drawn; everything where that leaves too little."""
    free = np.ones((frame.height, frame.width), bool)
    for zone in pair.zones:
        if zone["medium"] != "blank":
            free &= ~zone_mask(zone, frame, 0)
    free = cv2.erode(free.astype(np.uint8), np.ones((9, 9), np.uint8)) > 0
    return free if free.mean() > 0.15 else np.ones_like(free)


def darkness_of(light, ground):
    return 1 - (light / ground).mean(axis=2)


def solid_of(darkness, pair, frame):
    """Median of the darkest connected place: of solid zones if there are any, else of the darkest 25 mm² or more."""
    inside = np.isfinite(darkness)
    smooth = cv2.blur(np.where(inside, darkness, 0).astype(np.float32), (5, 5))
    zones = [zone for zone in pair.zones if zone["medium"] == "solid"]
    if zones:
        mask = np.zeros(darkness.shape, bool)
        for zone in zones:
            mask |= zone_mask(zone, frame, 1.0)
        values = darkness[mask & inside]
        if len(values) > 200:
            return float(np.median(values))
    threshold = np.quantile(smooth[inside], 0.995)
    count, labels, stats, _ = cv2.connectedComponentsWithStats((smooth >= threshold - 0.02).astype(np.uint8))
    large = [i for i in range(1, count) if stats[i, 4] >= 25 * SCALE**2]
    return float(np.median(darkness[np.isin(labels, large) & inside])) if large else float(threshold)


def zone_mask(zone, frame, inset_mm):
    mask = np.zeros((frame.height, frame.width), np.uint8)
    points = np.round(frame.to_px(zone["polygonMm"]) * 16).astype(np.int32)
    cv2.fillPoly(mask, [points], 1, shift=4)
    if inset_mm > 0:
        size = 2 * int(round(inset_mm * frame.px_per_mm)) + 1
        mask = cv2.erode(mask, cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (size, size)))
    return mask > 0


def grown_zone(zone, plane, frame):
    """
    The mask to sum over and the area to divide by: where the ring of 1.4 mm about a zone is bare, its outline may be
    grown, so that nothing is cut off by blur or a small misfit; else it is inset by 0.8 mm.
    """
    exact = zone_mask(zone, frame, 0)
    size = 2 * int(round(1.4 * frame.px_per_mm)) + 1
    kernel = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (size, size))
    grown = cv2.dilate(exact.astype(np.uint8), kernel) > 0
    far = cv2.dilate(grown.astype(np.uint8), kernel) > 0
    ring = plane[far & ~grown]
    ring = ring[np.isfinite(ring)]
    if len(ring) and np.abs(np.median(ring)) < 0.03 and (ring > 0.15).mean() < 0.02:
        return grown, int(exact.sum())
    return zone_mask(zone, frame, 0.8), None


def zone_coverage(plane, mask, area):
    values = plane[mask]
    values = values[np.isfinite(values)]
    if len(values) < 0.05 * mask.sum() or len(values) == 0:
        return None
    whole = area is not None and len(values) == mask.sum()
    mean = float(values.sum() / area) if whole else float(values.mean())
    independent = max(1.0, len(values) / 4)
    spread = 1.96 * np.hypot(values.std() / np.sqrt(independent), 0.004 + 0.004 * mean)
    return {"coverage": mean, "low": mean - spread, "high": mean + spread}


def measure_tone(pair, found):
    frame = Frame(pair.size_mm, BORDER_MM, SCALE)
    stone_table = chip_curve(pair, "stone", pair.stone, pair.stone_table)
    proof_table = chip_curve(pair, "proof", pair.proof, pair.proof_table)
    cell = int(CELL_MM * SCALE)
    whole = outside_zones(pair, frame)
    stone = rectify(pair.stone, found["stone_map"], frame, stone_table)
    ground, bare = ground_surface(stone, whole, cell)
    drawn = darkness_of(stone, ground)
    proof = rectify(pair.proof, found["proof_map"], frame, proof_table)
    sheet = sheet_mask(proof)
    bare_full = cv2.resize(bare.astype(np.uint8), (frame.width, frame.height), interpolation=cv2.INTER_NEAREST) > 0
    ground, _ = ground_surface(np.where(sheet[:, :, None], proof, np.nan), bare_full & sheet, cell)
    printed = np.where(sheet, darkness_of(proof, ground), np.nan)
    solids = {"stone": solid_of(drawn, pair, frame), "proof": solid_of(printed, pair, frame)}
    drawn, printed = drawn / solids["stone"], printed / solids["proof"]
    zones = []
    for zone in pair.zones:
        planes = {"drawn": drawn, "printed": printed}
        zones.append({"id": zone["id"]} | {k: zone_coverage(v, *grown_zone(zone, v, frame)) for k, v in planes.items()})
    return {"zones": zones, "solid": solids, "drawn": drawn, "printed": printed, "frame": frame}


def sheet_mask(light):
    """Where there is paper: the convex hull of the largest bright place."""
    grey = np.nan_to_num(light.mean(axis=2))
    bright = (grey > 0.45 * np.quantile(grey, 0.95)).astype(np.uint8)
    bright = cv2.morphologyEx(bright, cv2.MORPH_OPEN, np.ones((9, 9), np.uint8))
    contours, _ = cv2.findContours(bright, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
    largest = max(contours, key=cv2.contourArea)
    mask = np.zeros(grey.shape, np.uint8)
    cv2.fillPoly(mask, [cv2.convexHull(largest)], 1)
    return mask > 0


def change_maps(tone):
    """Lost, filled and scum by the stated thresholds on coverage smoothed with sigma 1 mm; blots under 12 mm² dropped."""
    frame = tone["frame"]
    known = np.isfinite(tone["printed"])
    smooth = lambda plane: cv2.GaussianBlur(np.where(known, plane, 0).astype(np.float32), (0, 0), SCALE)
    weight = np.maximum(cv2.GaussianBlur(known.astype(np.float32), (0, 0), SCALE), 1e-3)
    d, p = smooth(tone["drawn"]) / weight, smooth(tone["printed"]) / weight
    rules = {
        "lost": (d >= 0.10) & (p <= 0.4 * d),
        "filled": (d >= 0.10) & (d <= 0.85) & (p >= 0.93),
        "scum": (d <= 0.02) & (p >= 0.04),
    }
    border = int(BORDER_MM * SCALE)
    maps = {}
    for name, rule in rules.items():
        cut = (rule & known)[border:-border, border:-border].astype(np.uint8)
        count, labels, stats, _ = cv2.connectedComponentsWithStats(cut)
        small = np.array([False] + [stats[i, 4] < 12 * SCALE**2 for i in range(1, count)])
        maps[name] = np.where(small[labels], 0, cut * 255).astype(np.uint8)
    return maps
