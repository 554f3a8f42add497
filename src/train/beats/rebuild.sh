#!/usr/bin/env bash
# Rebuilds from nothing all that the program hears beats with: makes the songs, trains the network, exports it, fits the
# weights of bars and phrases, and scores the result on songs that none of these steps saw.
#
#   src/train/beats/rebuild.sh [FOLDER]     FOLDER (default: target/train) keeps songs and models; what is there is not made again
#
# Needs, from Debian: python3-numpy python3-scipy python3-torch fluidsynth fluid-soundfont-gm lame, a JDK and Maven.
# SONGS, MINUTES and PYTHON can be set; START=FOLDER goes on from a network that is there instead of from nothing.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
scripts=$home/src/train/beats
work=$(mkdir -p "${1:-$home/target/train}" && cd "${1:-$home/target/train}" && pwd)
resources=$home/src/main/resources/cuelead/dsp/beat
python="nice -n 15 ${PYTHON:-/usr/bin/python3}"
songs=${SONGS:-1200}
minutes=${MINUTES:-40}
export OMP_NUM_THREADS=1

echo "== songs"
half=$((songs / 2))
$python "$scripts/generate.py" train 0 $half "$work/clips" &
first=$!
$python "$scripts/generate.py" train $half "$songs" "$work/clips"
$python "$scripts/generate.py" valid 0 40 "$work/clips"
wait $first
$python "$scripts/generate.py" fit 0 40 "$work/fit" &
first=$!
$python "$scripts/generate.py" unseen 0 36 "$work/unseen"
$python "$scripts/generate.py" style 0 12 "$work/style"
$python "$scripts/generate.py" source 0 12 "$work/source"
wait $first

echo "== training"
if [ ! -e "$work/network.pt" ]; then
    if [ -n "${START:-}" ]; then
        $python "$scripts/train.py" "$work/clips" "$work/network.pt" "$minutes" "$START" 0.0015
    else
        $python "$scripts/train.py" "$work/clips" "$work/network.pt" "$minutes"
    fi
fi
$python "$scripts/export.py" "$work/network.pt" "$resources" "$home/src/test/resources/cuelead/dsp/beat/vector.csv"

echo "== weights of bars and phrases"
mvn -q -f "$home/pom.xml" -DskipTests package
mkdir -p "$work/classes"
javac -nowarn -cp "$home/target/classes" -d "$work/classes" "$home"/src/train/java/cuelead/dsp/beat/*.java
nice -n 15 java -cp "$work/classes:$home/target/classes" cuelead.dsp.beat.MarkSheet "$work"/fit/*.wav
$python "$scripts/fit_odds.py" "$work/fit" "$resources/odds.txt"

echo "== scores"
mvn -q -f "$home/pom.xml" -DskipTests package
for split in unseen style source; do
    rm -rf "$work/heard-$split"
    mkdir "$work/heard-$split"
    ln -s "$work/$split"/*.wav "$work/heard-$split"
    nice -n 15 java -jar "$home/target/cuelead.jar" beats "$work/heard-$split" >"$work/heard-$split.txt"
    $python "$scripts/score.py" "$work/$split" "$work/heard-$split" | tee "$work/scores-$split.txt"
done
