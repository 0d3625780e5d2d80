"""Reads an export of Stonetone with Python's own library: python3 examples/works_and_drift.py FOLDER

Prints how many works there are of each stage, the washouts that were timed, and how the darks of each edition drifted.
Columns and units: docs/export.md.
"""

import csv
import sys
from collections import Counter, defaultdict
from datetime import datetime
from pathlib import Path


def records(folder, kind):
    with open(Path(folder) / f"{kind}.csv", newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def moment(text):
    return datetime.fromisoformat(text.replace("Z", "+00:00"))


def timed_stages(events, stage):
    """Seconds from the start to the end of a stage, run by run; what was taken back is left out."""
    undone = {(e["runId"], e["payload"].split('"clientId":"')[-1].split('"')[0]) for e in events if e["kind"] == "undo"}
    started, found = {}, []
    for event in events:
        if event["stage"] != stage or (event["runId"], event["clientId"]) in undone:
            continue
        if event["kind"] == "stage-started":
            started[event["runId"]] = moment(event["at"])
        elif event["kind"] == "stage-ended" and event["runId"] in started:
            found.append((moment(event["at"]) - started.pop(event["runId"])).total_seconds())
    return found


def drift(entries):
    """First and last darkness of the darks, by edition; an empty cell is unknown, never 0."""
    darks = defaultdict(list)
    for entry in entries:
        if entry["kind"] == "reading" and entry["darks"] != "":
            darks[entry["editionId"]].append(float(entry["darks"]))
    return darks


def main(folder):
    stages = Counter(work["stage"] for work in records(folder, "works"))
    print("works:", ", ".join(f"{count} {stage}" for stage, count in sorted(stages.items())))
    washouts = timed_stages(records(folder, "run_events"), "washout")
    if washouts:
        print(f"washouts timed: {len(washouts)}, {min(washouts):.0f} to {max(washouts):.0f} s")
    for edition, darks in sorted(drift(records(folder, "ledger_entries")).items()):
        print(f"edition {edition}: darks {darks[0]:.3f} to {darks[-1]:.3f} over {len(darks)} readings")


if __name__ == "__main__":
    main(sys.argv[1])
