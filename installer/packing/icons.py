"""The icon in the sizes and formats that the systems want, drawn from its one drawing.

python installer/packing/icons.py FOLDER
"""

import sys
from pathlib import Path

from PIL import Image
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QGuiApplication, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

DRAWING = Path(__file__).parents[2] / "resources" / "pictures" / "icon.svg"
SIZES = (16, 24, 32, 48, 64, 128, 256, 512)


def draw(size: int, path: Path) -> None:
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(str(DRAWING)).render(painter, QRectF(0, 0, size, size))
    painter.end()
    if not image.save(str(path)):
        raise SystemExit(f"{path} cannot be written.")


def main(folder: Path) -> None:
    """PNG in all sizes, ICO for Windows, ICNS for macOS."""
    app = QGuiApplication([])
    folder.mkdir(parents=True, exist_ok=True)
    for size in SIZES:
        draw(size, folder / f"{size}.png")
    with Image.open(folder / "512.png") as largest:
        largest.save(folder / "pluckwright.ico", sizes=[(n, n) for n in SIZES if n <= 256])
        largest.save(folder / "pluckwright.icns")
    del app


if __name__ == "__main__":
    main(Path(sys.argv[1]))
