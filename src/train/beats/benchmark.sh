#!/usr/bin/env bash
# Writes BENCHMARK.md beside this script: how well Cuelead and general beat trackers hear the same made songs, in one run,
# as they are and in a hall (in_a_hall.sh).
#
#   src/train/beats/benchmark.sh [FOLDER]     FOLDER: for the songs and what is heard of them (default: target/train)
#
# Makes the songs of the draw. What is there is neither made nor heard again, so a run that was broken off goes on; take FOLDER's
# peer-* away to hear anew. DRAW: another draw (numbers that nothing was fitted to). SPLITS: fewer songs to make.
#
# Needs target/cuelead.jar (or JAR) and what rebuild.sh and in_a_hall.sh need. A peer that is not there is left out: aubiotrack
# (Debian: aubio-tools), and music-tempo (npm install music-tempo in the folder PEERS). The peers are only run here; the
# program does not use them.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
scripts=$home/src/train/beats
work=$(mkdir -p "${1:-$home/target/train}" && cd "${1:-$home/target/train}" && pwd)
export PEERS=${PEERS:-$work/peers}
python=${PYTHON:-/usr/bin/python3}
jar=${JAR:-$home/target/cuelead.jar}
draw=${DRAW:-17000}
songs=$work/draw-$draw
splits=${SPLITS:-unseen style source}
declare -A count=([unseen]=24 [style]=6 [source]=6)

for split in $splits; do
    $python -B "$scripts/generate.py" "$split" "$draw" $((draw + count[$split])) "$songs/$split"
done
"$scripts/in_a_hall.sh" "$songs/unseen" "$songs/unseen-hall"
"$scripts/in_a_hall.sh" "$songs/unseen/unmastered" "$songs/unmastered-hall"

# Every hear_X FOLDER HEARD writes a beat file for each song of FOLDER.
hear_cuelead() {
    ln -s "$1"/*.wav "$2"
    nice -n 15 java -Xmx500m -jar "$jar" beats "$2" >"$2/said.log" 2>&1 || true
}
hear_aubio() {
    local song
    for song in "$1"/*.wav; do
        nice -n 10 aubiotrack -i "$song" 2>/dev/null | sed 's/$/\t1\t1/' >"$2/$(basename "$song" .wav).beats"
    done
}
hear_music_tempo() { nice -n 10 node "$scripts/music_tempo.mjs" "$1" "$2"; }

row() { # NAME FOLDER PEER: one line of the table
    local heard line
    heard=$work/peer-$draw-$(basename "$2")-$3
    if [ ! -d "$heard" ]; then
        rm -rf "$heard.part" && mkdir "$heard.part"
        "hear_$3" "$2" "$heard.part"
        mv "$heard.part" "$heard"
    fi
    line=$($python "$scripts/score.py" "$2" "$heard" | tee "$heard.txt" | tail -n 1)
    echo "| $1 | $3 | $($python "$scripts/table_row.py" "$line" "$3") |"
}

peers=(cuelead)
command -v aubiotrack >/dev/null && peers+=(aubio)
[ -d "$PEERS/node_modules/music-tempo" ] && peers+=(music_tempo)
{
    sed "s/DRAW_END/$((draw + count[unseen]))/g; s/DRAW/$draw/g" "$scripts/benchmark-head.md"
    for split in $splits; do
        for peer in "${peers[@]}"; do row "$split" "$songs/$split" "$peer"; done
        if [ "$split" = unseen ]; then
            for peer in "${peers[@]}"; do row "unseen, in a hall" "$songs/unseen-hall" "$peer"; done
            for peer in "${peers[@]}"; do row "unseen, not mastered" "$songs/unseen/unmastered" "$peer"; done
            for peer in "${peers[@]}"; do row "unseen, not mastered, in a hall" "$songs/unmastered-hall" "$peer"; done
        fi
    done
} >"$work/BENCHMARK.md"
mv "$work/BENCHMARK.md" "$scripts/BENCHMARK.md"
cat "$scripts/BENCHMARK.md"
