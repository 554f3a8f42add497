#!/usr/bin/env bash
# Rebuilds from nothing the network that hears sounds of speech: makes speech of synthetic voices, trains on it, and writes
# its weights beside the program's class and what it gives for a made signal beside its test.
#
#   src/train/takes/rebuild.sh [FOLDER [MINUTES]]
#
# Needs espeak-ng with its library, flite, sox, and Python with numpy, scipy and torch.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
work=${1:-$home/target/speech}
python=${PYTHON:-/usr/bin/python3}
resources=cuelead/dsp/speech

"$python" "$home/src/train/takes/train.py" "$work" --minutes "${2:-26}"
"$python" "$home/src/train/takes/export.py" "$work/ear.pt" "$work/speech.npz" \
    "$home/src/main/resources/$resources/speech.f32" "$home/src/test/resources/$resources/network.csv"
