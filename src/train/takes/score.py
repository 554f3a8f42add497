"""score.py CSV TAKE-FOLDER [CSV TAKE-FOLDER ...]: compares what "cuelead review --csv" wrote with truth.csv of the take."""
import csv
import json
import sys
from pathlib import Path

import numpy as np


def rows(path):
    return list(csv.DictReader(open(path, newline="")))


def compare(found, folder):
    """Errors of centres in ms, statuses right and all, words right and all, false extras, and what went wrong."""
    truth = rows(folder / "truth.csv")
    script = rows(folder / "script.csv")
    latency = json.loads((folder / "meta.json").read_text())["latency_ms"] / 1000
    told = {}
    extras = [row for row in found if row["kind"] == "extra"]
    for row in found:
        if row["kind"] != "extra":
            told[row["planned"]] = row
    centres, status, words, wrong = [], [], [], []
    for row in truth:
        if row["kind"] == "extra":
            near = [e for e in extras if abs(float(e["heard"]) + latency - float(row["pc"])) < 0.4]
            status.append(bool(near))
            words.append(bool(near) and near[0]["heard_word"] == row["word"])
            if near:
                extras.remove(near[0])
        else:
            planned = script[int(row["idx"])]
            mine = told.get("%.6f" % float(planned["time"]))
            kind = mine["kind"] if mine else "none"
            status.append(kind == row["kind"])
            if row["kind"] != "missed":
                words.append(kind not in ("none", "missed") and mine["heard_word"] == row["word"])
                if kind not in ("none", "missed"):
                    centres.append(float(mine["error_ms"]) - float(row["err_ms"]))
        if not status[-1] or (row["kind"] != "missed" and not words[-1]):
            at = row["pc"] or script[int(row["idx"])]["time"]
            mine = told.get("%.6f" % float(script[int(row["idx"])]["time"])) if row["idx"] else (near or [None])[0]
            wrong.append("%s %s %s at %s %s -> %s" % (row["kind"], row["word"], row["idx"], at, row["err_ms"],
                                                      mine and [mine["kind"], mine["heard_word"], mine["error_ms"]]))
    wrong += ["false extra %s at %s" % (e["heard_word"], e["heard"]) for e in extras]
    return np.array(centres), status, words, len(extras), wrong


def line(name, centres, status, words, extras):
    off = np.abs(centres)
    return "%-8s centre: median %5.1f, p90 %5.1f, bias %+5.1f ms; status %5.1f %%, word %5.1f %%, false extras %s" % (
        name, np.median(off), np.percentile(off, 90), np.median(centres), 100 * np.mean(status), 100 * np.mean(words), extras)


def main(arguments):
    all_centres, all_status, all_words, most = [], [], [], []
    for found, folder in zip(arguments[::2], arguments[1::2]):
        centres, status, words, extras, wrong = compare(rows(found), Path(folder))
        print(line(Path(folder).name, centres, status, words, extras))
        for item in wrong:
            print("           " + item)
        all_centres += list(centres)
        all_status += status
        all_words += words
        most.append(extras)
    print(line("all", np.array(all_centres), all_status, all_words, "%d at most" % max(most)))


main(sys.argv[1:])
