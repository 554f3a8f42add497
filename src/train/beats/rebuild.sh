#!/usr/bin/env bash
# Rebuilds from nothing all that the program hears beats with: makes the songs, trains the network, exports it, fits the
# weights of bars and phrases, and scores the result on songs that none of these steps saw.
#
#   src/train/beats/rebuild.sh [--quick] [FOLDER]
#
# FOLDER (default: target/train) keeps songs and models; what is there is not made again. --quick: a handful of songs and a
# minute of training, to see that every step works; what comes of it hears badly and stays in FOLDER, where otherwise the
# program's own files are written.
#
# Needs, from Debian: python3-numpy python3-scipy python3-torch fluidsynth fluid-soundfont-gm lame, a JDK and Maven.
# SONGS, FIT_SONGS, MINUTES, PYTHON and MVN can be set; START=FOLDER goes on from a network that is there.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
scripts=$home/src/train/beats
quick=no
if [ "${1:-}" = --quick ]; then
    quick=yes
    shift
fi
work=$(mkdir -p "${1:-$home/target/train}" && cd "${1:-$home/target/train}" && pwd)
python="nice -n 15 ${PYTHON:-/usr/bin/python3} -B"
export OMP_NUM_THREADS=1
if [ $quick = yes ]; then
    songs=${SONGS:-16} valid=4 fit=${FIT_SONGS:-8} unseen=2 others=1 minutes=${MINUTES:-1}
    root=$work/quick
    vector=$work/vector.csv
    mkdir -p "$root/cuelead/dsp/beat"
    cp "$home"/src/main/resources/cuelead/dsp/beat/{net,odds}.txt "$root/cuelead/dsp/beat"
else
    songs=${SONGS:-1200} valid=40 fit=${FIT_SONGS:-340} unseen=36 others=12 minutes=${MINUTES:-40}
    root=$home/src/main/resources
    vector=$home/src/test/resources/cuelead/dsp/beat/vector.csv
fi
resources=$root/cuelead/dsp/beat

echo "== songs"
half=$((songs / 2))
$python "$scripts/generate.py" train 0 $half "$work/clips" &
first=$!
$python "$scripts/generate.py" train $half "$songs" "$work/clips"
$python "$scripts/generate.py" valid 0 $valid "$work/clips"
wait $first
$python "$scripts/generate.py" fit 0 "$fit" "$work/fit" &
first=$!
$python "$scripts/generate.py" unseen 0 $unseen "$work/unseen"
$python "$scripts/generate.py" style 0 $others "$work/style"
$python "$scripts/generate.py" source 0 $others "$work/source"
wait $first

echo "== training"
if [ ! -e "$work/network.pt" ]; then
    if [ -n "${START:-}" ]; then
        $python "$scripts/train.py" "$work/clips" "$work/network.pt" "$minutes" "$START" 0.0015
    else
        $python "$scripts/train.py" "$work/clips" "$work/network.pt" "$minutes"
    fi
fi
$python "$scripts/export.py" "$work/network.pt" "$resources" "$vector"

# what was just made stands before what the program was built with
if [ $quick = no ] || [ ! -e "$home/target/cuelead.jar" ]; then
    ${MVN:-mvn} -q -f "$home/pom.xml" -DskipTests package
fi
jar=$home/target/cuelead.jar

echo "== weights of bars and phrases"
mkdir -p "$work/classes"
javac -nowarn -cp "$jar" -d "$work/classes" "$home"/src/train/java/cuelead/dsp/beat/*.java
nice -n 15 java -cp "$root:$work/classes:$jar" cuelead.dsp.beat.MarkSheet "$work"/fit/*.wav
$python "$scripts/fit_odds.py" "$work/fit" "$resources/odds.txt"

echo "== scores"
$python "$scripts/check_score.py"
for split in unseen style source; do
    rm -rf "$work/heard-$split"
    mkdir "$work/heard-$split"
    ln -s "$work/$split"/*.wav "$work/heard-$split"
    # a song without a steady beat ends with another code, and counts as nothing heard
    nice -n 15 java -cp "$root:$jar" cuelead.cli.Main beats "$work/heard-$split" >"$work/heard-$split.txt" 2>&1 || true
    $python "$scripts/score.py" "$work/$split" "$work/heard-$split" | tee "$work/scores-$split.txt"
done
