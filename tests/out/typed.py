#!/usr/bin/env python3
"""Writes what a clinician types for the letters that are looked at, and what must not be in them. All invented.

Usage: typed.py FOLDER
"""
import json
import pathlib
import sys

folder = pathlib.Path(sys.argv[1])
plain = {
    "person": "Invented Person", "known_by": "Born 1 January 1990, number 000 000",
    "to": "Dr Ada Invented\nWillow Lane clinic\nNowhere", "from": "Ida Marlowe (invented), physical therapist",
    "reached_at": "Telephone 01632 960123", "date": "2026-05-11",
    "view": "The steps are getting easier.", "next": "The same step for three more weeks.",
    "request": "Please look at the scar again before we go on.",
}
long_texts = " ".join(f"Sentence {number} of a long text, invented from beginning to end." for number in range(1, 31))
scripts = {
    **plain, "person": "Zażółć Ελένη Ирина <script>alert('x')</script>",
    "view": "“Quoted” & 'so' — 22,5 mm … ½ × 3 ≤ 4; שלום.", "request": "¿Puede verla otra vez? Ёлка, ß, ø, ı, ż.",
}
texts = {
    "plain.typed": json.dumps(plain),
    "long.typed": json.dumps({**plain, "view": long_texts, "next": long_texts, "request": long_texts}),
    "scripts.typed": json.dumps(scripts),
    # Of the invented scenario: questions, what she looks forward to, the plan's nickname, the wish.
    "demo.not": "Is there a size between\nwhich day of the week\nswim in the sea\nWren\ntime alone\nTIME ALONE\n",
    # Of the other invented diaries: notes, questions, the nickname, whom she spoke with.
    "invented.not": "An invented note\nA second one\nQUESTION\nWren\nInvented Desk\ntime alone\n",
}
for name, text in texts.items():
    (folder / name).write_text(text, encoding="utf-8")
