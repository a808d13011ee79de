#!/bin/sh
# Checks every SVG file of a folder: well-formed, true to size, and drawn by librsvg at that size.
#
# usage: check_svg.sh FOLDER
#
# Needs xmllint (Debian: libxml2-utils), rsvg-convert (librsvg2-bin) and python3. Exit 0: all sound. 1: something is wrong.
# 2: nothing to check.

folder=${1:?usage: check_svg.sh FOLDER}
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
count=0
bad=0

fail() {
    echo "$1: $2" >&2
    bad=$((bad + 1))
}

# 254 dots an inch are 10 dots a millimetre.
dpi=254

find "$folder" -name '*.svg' | sort >"$work/files"
while IFS= read -r file; do
    count=$((count + 1))
    if ! xmllint --noout --nonet "$file"; then
        fail "$file" "not well-formed XML"
        continue
    fi
    width=$(xmllint --xpath 'string(/*/@width)' "$file")
    height=$(xmllint --xpath 'string(/*/@height)' "$file")
    box=$(xmllint --xpath 'string(/*/@viewBox)' "$file")
    [ "$box" = "0 0 ${width%mm} ${height%mm}" ] && [ "$width" != "${width%mm}" ] ||
        fail "$file" "width $width, height $height and view box $box are not the same millimetres"
    moved=$(xmllint --xpath 'count(//*[@transform and not(local-name() = "text")])' "$file")
    [ "$moved" = 0 ] || fail "$file" "$moved elements are moved by a transform"
    if ! rsvg-convert -d $dpi -p $dpi -b white "$file" -o "$work/picture.png"; then
        fail "$file" "librsvg cannot draw it"
        continue
    fi
    size=$(python3 -c '
import struct, sys
with open(sys.argv[1], "rb") as picture:
    print(*struct.unpack(">II", picture.read(24)[16:24]))
' "$work/picture.png")
    # librsvg rounds a started dot up.
    python3 -c '
import sys
width, height, *size = sys.argv[1:]
for told, drawn in zip((width, height), size):
    assert 0 <= int(drawn) - 10 * float(told[:-2]) <= 1
' "$width" "$height" $size 2>/dev/null ||
        fail "$file" "drawn with $size dots at $dpi dpi, expected 10 a millimetre of $width x $height"
    echo "$(basename "$file"): $width x $height, $size dots"
done <"$work/files"
[ "$count" -gt 0 ] || { echo "no SVG file in $folder" >&2; exit 2; }
echo "$count SVG files, $bad problems"
[ "$bad" -eq 0 ]
