#!/bin/sh
# Pluckwright on macOS: build dist/Pluckwright.app and a disk image of it.
#
#     sh installer/packing/macos.sh
#
# NOT TRIED: written on Linux, where no macOS was to be had. What it relies on is in PACKAGES.md.
set -eu

cd "$(dirname "$0")/../.."
python3 installer/package.py folder

# The papers lie inside the bundle, where they travel with it.
for paper in licences bill-of-materials.cdx.json; do
    cp -R "dist/pluckwright/$paper" "dist/Pluckwright.app/Contents/Resources/"
done
# Signed for this machine only. For others to open it without a question it has to be signed with
# a developer's certificate and notarised: IDENTITY="Developer ID Application: ..." sh macos.sh
codesign --force --deep --sign "${IDENTITY:--}" dist/Pluckwright.app
hdiutil create -ov -volname Pluckwright -srcfolder dist/Pluckwright.app -format UDZO dist/Pluckwright.dmg
