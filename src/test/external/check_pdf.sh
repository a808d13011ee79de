#!/bin/sh
# Checks every PDF file of a folder with poppler: fonts embedded, no scaling asked for, and on the raster of every page, at 300 and at
# 600 dots an inch, four check bars that measure true to 0.1 mm. A bar of a corrected file measures what its page says.
#
# usage: check_pdf.sh FOLDER [DRAWING.svg DRAWING.pdf]...
#
# A pair after the folder is one drawing written twice. Its SVG, text left out, is drawn by librsvg, and each of its dots must be found
# on the PDF within 0.1 mm: the outline is measured by two programs that know nothing of each other. Pages of a tiled PDF (A4) are joined
# by their register marks alone.
#
# Needs pdftoppm, pdffonts, pdfinfo, pdftotext (Debian: poppler-utils), rsvg-convert (librsvg2-bin), convert (imagemagick), python3. Exit 0: all sound. 1:
# something is wrong. 2: nothing to check.

here=$(dirname "$0")
folder=${1:?usage: check_pdf.sh FOLDER [DRAWING.svg DRAWING.pdf]...}
shift
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
count=0
bad=0

fail() {
    echo "$1: $2" >&2
    bad=$((bad + 1))
}

find "$folder" -name '*.pdf' | sort >"$work/files"
while IFS= read -r file; do
    count=$((count + 1))
    pdfinfo "$file" >"$work/info" 2>"$work/errors" || fail "$file" "pdfinfo cannot read it"
    [ -s "$work/errors" ] && fail "$file" "$(head -1 "$work/errors")"
    grep -Eq '^(CreationDate|ModDate)' "$work/info" && fail "$file" "it holds a date"
    grep -aq '/PrintScaling */None' "$file" || fail "$file" "viewers are not asked to leave the scale alone"
    # Columns from the right: object number (two), uni, sub, emb.
    pdffonts "$file" | tail -n +3 | awk '$(NF-4) != "yes" { exit 1 }' || fail "$file" "a font is not embedded"
    factors=$(pdftotext -raw "$file" - | sed -n 's/.*level x \([0-9.]*\), upright x \([0-9.]*\).*/\1 \2/p' | head -1)
    for dpi in 300 600; do
        rm -f "$work"/page*
        pdftoppm -gray -r $dpi "$file" "$work/page" || fail "$file" "pdftoppm cannot draw it at $dpi dpi"
        for page in "$work"/page*.pgm; do
            python3 "$here/measure_pgm.py" bars "$page" $dpi ${factors:-1 1} >"$work/told" 2>&1 ||
                fail "$file" "$(basename "$page" .pgm) at $dpi dpi: $(tail -1 "$work/told")"
        done
        echo "$(basename "$file"): $(ls "$work"/page*.pgm | wc -l) pages at $dpi dpi; last: $(tail -1 "$work/told")"
    done
done <"$work/files"
[ "$count" -gt 0 ] || { echo "no PDF file in $folder" >&2; exit 2; }

# Pages of one drawing become one raster: one as it is, several by their register marks, which are known by their colour.
join() {
    rm -f "$work/joined.pgm"
    tiles=$(pdftotext -raw "$1" - | sed -n 's/^Sheet .* column \([0-9]*\), row \([0-9]*\)\..*/\1 \2/p' | tail -1)
    if [ -z "$tiles" ]; then
        cp "$work"/page*.pgm "$work/joined.pgm"
        return
    fi
    rm -f "$work"/colour*
    pdftoppm -r "$2" "$1" "$work/colour" || return 1
    pages=
    for page in "$work"/page*.pgm; do
        number=$(basename "$page" .pgm | sed 's/page-//')
        pages="$pages $page $work/colour-$number.ppm"
    done
    # shellcheck disable=SC2086
    python3 "$here/join_tiles.py" $tiles "$work/joined.pgm" $pages >"$work/told" 2>&1 && echo "$(basename "$1") at $2 dpi: $(cat "$work/told")"
}

while [ $# -ge 2 ]; do
    for dpi in 300 600; do
        rm -f "$work"/page*
        sed 's,<text[^>]*>[^<]*</text>,,' "$1" >"$work/lines.svg"
        rsvg-convert -d $dpi -p $dpi -b white "$work/lines.svg" -o "$work/lines.png" &&
            convert "$work/lines.png" -alpha off -colorspace Gray -depth 8 "$work/lines.pgm" &&
            pdftoppm -gray -r $dpi "$2" "$work/page" ||
            fail "$2" "cannot be drawn"
        join "$2" $dpi || fail "$2" "at $dpi dpi: $(tail -1 "$work/told")"
        python3 "$here/measure_pgm.py" same "$work/lines.pgm" "$work/joined.pgm" $dpi >"$work/told" 2>&1 ||
            fail "$2" "at $dpi dpi: $(tail -1 "$work/told")"
        echo "$(basename "$2") against $(basename "$1") at $dpi dpi: $(tail -1 "$work/told")"
    done
    shift 2
done
echo "$count PDF files, $bad problems"
[ "$bad" -eq 0 ]
