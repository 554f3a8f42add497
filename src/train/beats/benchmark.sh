#!/usr/bin/env bash
# Writes BENCHMARK.md beside this script: how well Cuelead and general beat trackers hear the same made songs, in one run.
#
#   src/train/beats/benchmark.sh [FOLDER]     FOLDER: where rebuild.sh left its songs (default: target/train)
#
# Needs target/cuelead.jar. A peer that is not there is left out: aubiotrack (Debian: aubio-tools), and music-tempo
# (npm install music-tempo in the folder PEERS). The peers are only run here; the program does not use them.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
scripts=$home/src/train/beats
work=$(cd "${1:-$home/target/train}" && pwd)
export PEERS=${PEERS:-$work/peers}
python=${PYTHON:-/usr/bin/python3}
jar=${JAR:-$home/target/cuelead.jar}

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

row() { # SPLIT PEER: one line of the table
    local heard=$work/peer-$1-$2 line
    rm -rf "$heard" && mkdir "$heard"
    "hear_$2" "$work/$1" "$heard"
    line=$($python "$scripts/score.py" "$work/$1" "$heard" | tee "$work/peer-$1-$2.txt" | tail -n 1)
    echo "| $1 | $2 | $($python "$scripts/table_row.py" "$line" "$2") |"
}

peers=(cuelead)
command -v aubiotrack >/dev/null && peers+=(aubio)
[ -d "$PEERS/node_modules/music-tempo" ] && peers+=(music_tempo)
{
    cat "$scripts/benchmark-head.md"
    for split in unseen style source; do
        for peer in "${peers[@]}"; do row "$split" "$peer"; done
    done
} >"$work/BENCHMARK.md"
mv "$work/BENCHMARK.md" "$scripts/BENCHMARK.md"
cat "$scripts/BENCHMARK.md"
