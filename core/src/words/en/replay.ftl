# The rule beside a diary, entry by entry, for the clinician.

replay-title = The rule on this diary, entry by entry
replay-tried = Beside it stands another rule on the same diary. It replaces every rule of the plan, and what was paused under the old one.
replay-none = nothing to suggest
replay-pause = pause and call
replay-back = back to { $step }
replay-stay = stay
replay-stay-tell = stay, and tell the clinician
replay-talk = ready to talk
replay-up = try { $step }
replay-corrected = Corrected: { $what }
replay-struck = An earlier entry is left out
replay-same = Both rules say the same at every entry.
replay-differ = { $count ->
        [one] The rules say different things at one entry, marked with *.
       *[other] The rules say different things at { $count } entries, marked with *.
    }
replay-empty = There is no entry in this diary.
