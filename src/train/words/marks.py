"""marks.py FOLDER: compares FOLDER/CONDITION/marks.txt with FOLDER/truth.csv; errors in milliseconds."""
import collections
import csv
import re
import sys
from pathlib import Path

import numpy as np

folder = Path(sys.argv[1])
errors = collections.defaultdict(list)
missing = []
for row in csv.DictReader(open(folder / "truth.csv")):
    name = row["word"].replace(" ", "_") + ".wav"
    marks = (folder / row["condition"] / "marks.txt").read_text()
    found = re.search(r"^%s = ([\d.]+) of" % re.escape(name), marks, re.M)
    if not found:
        missing.append(row["condition"] + " " + row["word"])
        continue
    error = 1000 * (float(found[1]) - float(row["centre"]))
    voice, _, noise = row["condition"].rsplit("_", 2)
    for group in ("all", voice, noise):
        errors[group].append(error)
print("%-20s %6s %7s %6s %6s" % ("", "words", "median", "p95", "gross"))
for group, values in sorted(errors.items()):
    off = np.abs(values)
    print("%-20s %6d %7.1f %6.1f %5.2f%%" % (group, len(off), np.median(off), np.percentile(off, 95),
                                            100 * np.mean(off > 80)))
print("not marked: %d %s" % (len(missing), missing[:5]))
