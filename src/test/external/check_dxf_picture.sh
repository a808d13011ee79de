#!/bin/sh
# Draws DXF files with a second program and holds the picture against the SVG file of the same drawing, drawn by a third: each dot of
# the SVG's lines, text left out, must be found on the DXF's picture within 0.1 mm. Drawings must fit on A4, upright, with 10 mm to
# spare on every side: make them on a small sheet.
#
# usage: check_dxf_picture.sh FOLDER [SUFFIX]
#
# SUFFIX is what a DXF file's name has before its ending and its SVG file has not, such as -r12-mm.
#
# Needs librecad, pdftoppm (Debian: poppler-utils), rsvg-convert (librsvg2-bin), convert (imagemagick), python3. Exit 0: all alike. 1:
# something is wrong. 2: nothing to check.

here=$(cd "$(dirname "$0")" && pwd)
folder=${1:?usage: check_dxf_picture.sh FOLDER [SUFFIX]}
suffix=$2
# Two dots are 0.1 mm.
dpi=508
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
count=0
bad=0

for file in "$folder"/*"$suffix".dxf; do
    drawing=$(basename "$file" "$suffix.dxf")
    # Sections are framed for their paper and show more on it than a margin of 10 mm leaves room for.
    case $drawing in *-section) continue ;; esac
    [ -f "$folder/$drawing.svg" ] || continue
    count=$((count + 1))
    rm -f "$work"/page*
    # Group 370 is the width of a pen, in hundredths of a mm: a thin one hides nothing.
    awk '{ print pen ? "5" : $0; pen = !pen && $0 ~ /^ *370$/ }' "$file" >"$work/drawing.dxf"
    sed 's,<text[^>]*>[^<]*</text>,,; s/stroke="#[0-9a-fA-F]*"/stroke="#000000"/g; s/stroke-width="[0-9.]*"/stroke-width="0.1"/g' \
        "$folder/$drawing.svg" >"$work/lines.svg"
    if (cd "$work" && QT_QPA_PLATFORM=offscreen timeout 120 librecad dxf2pdf -p 210x297 -s 1.0 -m -c drawing.dxf) >"$work/told" 2>&1 &&
        pdftoppm -gray -r $dpi "$work/drawing.pdf" "$work/page" &&
        rsvg-convert -d $dpi -p $dpi -b white "$work/lines.svg" -o "$work/lines.png" &&
        convert "$work/lines.png" -alpha off -colorspace Gray -depth 8 "$work/lines.pgm" &&
        python3 "$here/measure_pgm.py" same "$work/lines.pgm" "$work"/page*.pgm $dpi >"$work/told" 2>&1; then
        echo "$(basename "$file"): $(tail -1 "$work/told")"
    else
        echo "$file: $(tail -1 "$work/told")" >&2
        bad=$((bad + 1))
    fi
    rm -f "$work/drawing.pdf"
done
[ "$count" -gt 0 ] || { echo "no DXF file with its SVG in $folder" >&2; exit 2; }
echo "$count DXF files drawn, $bad problems"
[ "$bad" -eq 0 ]
