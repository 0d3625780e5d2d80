"""Decoding, linear light, and rectifying to stone millimetres."""

import cv2
import numpy as np


def read_codes(path):
    """Upright picture as BGR code values, 8 or 16 bits."""
    codes = cv2.imread(path, cv2.IMREAD_COLOR | cv2.IMREAD_ANYDEPTH)
    if codes is None:
        raise SystemExit(f"cannot read {path}")
    return codes


def linear_table(dtype):
    """Linear light of every code value."""
    most = 255 if dtype == np.uint8 else 65535
    code = np.arange(most + 1) / most
    return np.where(code <= 0.04045, code / 12.92, ((code + 0.055) / 1.055) ** 2.4).astype(np.float32)


class Frame:
    """A raster in stone mm: pixel (i, j) has its centre at origin + ((i + .5), (j + .5)) / px_per_mm."""

    def __init__(self, size_mm, border_mm, px_per_mm):
        self.px_per_mm = px_per_mm
        self.origin = np.array([-border_mm, -border_mm], float)
        self.width = int(round((size_mm[0] + 2 * border_mm) * px_per_mm))
        self.height = int(round((size_mm[1] + 2 * border_mm) * px_per_mm))

    def centres(self):
        """Stone mm of all pixel centres, two (height, width) planes."""
        x = (np.arange(self.width) + 0.5) / self.px_per_mm + self.origin[0]
        y = (np.arange(self.height) + 0.5) / self.px_per_mm + self.origin[1]
        return np.meshgrid(x.astype(np.float32), y.astype(np.float32))

    def to_px(self, points_mm):
        """Raster coordinates (pixel centres at whole numbers, as OpenCV counts) of stone mm."""
        return (np.asarray(points_mm, float) - self.origin) * self.px_per_mm - 0.5


class PlaneMap:
    """Stone mm to photograph px (centres at +0.5): a homography after an optional smooth displacement."""

    def __init__(self, homography, stretch=None):
        self.homography = np.asarray(homography, float)
        self.stretch = stretch

    def points(self, points_mm):
        points = np.asarray(points_mm, float)
        moved = points + (self.stretch(points) if self.stretch else 0)
        x = np.column_stack([moved, np.ones(len(moved))]) @ self.homography.T
        return x[:, :2] / x[:, 2:]

    def raster(self, frame):
        """Photograph px of every pixel of a frame, as OpenCV's remap wants them."""
        step = max(1, int(round(4 * frame.px_per_mm)))
        columns = np.arange(0, frame.width + step, step)
        rows = np.arange(0, frame.height + step, step)
        gx, gy = np.meshgrid((columns + 0.5) / frame.px_per_mm + frame.origin[0],
                             (rows + 0.5) / frame.px_per_mm + frame.origin[1])
        nodes = self.points(np.column_stack([gx.ravel(), gy.ravel()])) - 0.5
        x = (np.arange(frame.width) / step).astype(np.float32)
        y = (np.arange(frame.height) / step).astype(np.float32)
        mx, my = np.meshgrid(x, y)
        planes = [nodes[:, axis].reshape(gx.shape).astype(np.float32) for axis in (0, 1)]
        return [cv2.remap(plane, mx, my, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE) for plane in planes]


def rectify(codes, plane_map, frame, table, only_green=False):
    """Linear light in the frame, area-averaged where the frame is coarser than the picture; NaN off the picture."""
    scale = plane_map_scale(plane_map, frame)
    source = codes[:, :, 1] if only_green else codes
    shrink = 1
    while scale / shrink >= 2:
        shrink *= 2
    if shrink > 1:
        # Averages are taken in linear light: as 16-bit integers, to hold memory down.
        light = (table[source] * 65535).astype(np.uint16)
        height, width = light.shape[0] // shrink, light.shape[1] // shrink
        light = cv2.resize(light[: height * shrink, : width * shrink], (width, height), interpolation=cv2.INTER_AREA)
    mx, my = plane_map.raster(frame)
    if shrink > 1:
        mx, my = (mx + 0.5) / shrink - 0.5, (my + 0.5) / shrink - 0.5
        picked = cv2.remap(light, mx, my, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE).astype(np.float32) / 65535
        shape = light.shape
    else:
        light = table[source]
        picked = cv2.remap(light, mx, my, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        shape = light.shape
    outside = (mx < 0) | (my < 0) | (mx > shape[1] - 1) | (my > shape[0] - 1)
    picked[outside] = np.nan
    return picked


def plane_map_scale(plane_map, frame):
    """Photograph px to one frame px, at the frame's middle."""
    middle = frame.origin + np.array([frame.width, frame.height]) / frame.px_per_mm / 2
    a, b = plane_map.points([middle, middle + [1, 0]])
    return float(np.hypot(*(b - a))) / frame.px_per_mm


def corner_map(corners_px, size_mm):
    """Homography from the four corners of the work rectangle."""
    w, h = size_mm
    source = np.float32([[0, 0], [w, 0], [w, h], [0, h]])
    return PlaneMap(cv2.getPerspectiveTransform(source, np.float32(corners_px)))
