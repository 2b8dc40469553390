"""Painted systems of the engraving, as pixels."""

from __future__ import annotations

import numpy as np
from lxml import etree
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

SVG = "{http://www.w3.org/2000/svg}"

PIXELS = 0.1  # of an engraving unit: a finger number is some 17 pixels high


def ink(root, width: float, height: float) -> np.ndarray:
    """Painted coverage, 0 to 255."""
    image = QImage(int(width * PIXELS), int(height * PIXELS), QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    QSvgRenderer(etree.tostring(root)).render(painter, QRectF(image.rect()))
    painter.end()
    data = np.frombuffer(image.constBits(), dtype=np.uint8)
    return data.reshape(image.height(), image.bytesPerLine() // 4, 4)[:, :, 3].copy()
