# The clinician's first reading of a summary. Short: it is read in ten minutes before a visit.

reading-title = Summary, as handed over
reading-time-alone = TIME ALONE, PLEASE: the person who made this would like time alone with you. Do not mention it before others.

reading-narrowed = THIS IS NOT THE WHOLE DIARY. The person chose what to hand over:
reading-narrowed-span = only what happened from { $from } to { $to }
reading-narrowed-from = only what happened from { $from } on
reading-narrowed-to = only what happened up to { $to }
reading-narrowed-notes = without notes
reading-narrowed-questions = without questions for the visit

reading-for = Plan for: { $name }
reading-made = Made on { $day } { $year } at { $time }. Everything in it is self-reported.
reading-signed = Signed, and unchanged since. Mark of this diary, to compare next time: { $pin }

reading-day = { $weekday ->
        [1] Mon
        [2] Tue
        [3] Wed
        [4] Thu
        [5] Fri
        [6] Sat
       *[7] Sun
    } { $day } { $month ->
        [1] Jan
        [2] Feb
        [3] Mar
        [4] Apr
        [5] May
        [6] Jun
        [7] Jul
        [8] Aug
        [9] Sep
        [10] Oct
        [11] Nov
       *[12] Dec
    }
reading-day-of-year = { $day } { $year }
reading-on-back = on the back
reading-side-lying = on the side
reading-sitting = sitting
reading-standing = standing
reading-position-other = other position
reading-step-sized = { $name } ({ $size })
reading-used = { $what }, { $position }
reading-weekly = { $times ->
        [one] once a week
       *[other] { $times } times a week
    }
reading-weekly-span = { $least } to { $most } times a week
reading-stopped = stopped: { $reason }
reading-could-not-start = could not start: { $reason }
reading-reason-discomfort = discomfort
reading-reason-did-not-go-in = did not go in
reading-reason-upset = upset
reading-reason-interrupted = interrupted from outside
reading-reason-other = another reason
reading-rated = { $rating } { $number }
reading-unrated = { $rating } not rated

reading-open = Open signs
reading-nothing-open = None open, no pause.
reading-open-sign = “{ $sign }” ({ $tier }), open since { $day }
reading-paused = Paused by the rule, until a talk closes it
reading-paused-since = Paused by the rule since { $day }, until a talk closes it
reading-tier-emergency = emergency
reading-tier-stop = stop and call
reading-tier-ask-first = ask first
reading-tier-note = note only

reading-questions = Questions for the visit
reading-question = { $text } ({ $day })

reading-present = Present step
reading-no-step = No step in use.
reading-step-since = { $step }, since { $day }
reading-step-not-confirmed = Not confirmed as the one in use: ask which size is really used.
reading-programme = Plan of { $clinician }, revision { $revision } of { $day }
reading-review-passed = The plan was due for review by { $day }; until then no step up is said.

reading-by-step = Step by step, latest first (each within one step and one revision)
reading-stretch = { $step }, { $first } to { $last }, revision { $revision }
reading-practised = practised { $sessions ->
        [one] once
       *[other] { $sessions } times
    } in { $span ->
        [one] { $span } day
       *[other] { $span } days
    }{ $off ->
        [0] { "" }
        [one] , 1 of them off
       *[other] , { $off } of them off
    }; planned for that time: { $least } to { $most } ({ $schedule })
reading-elsewhere = { $count ->
        [one] 1 of them with another size or position, not counted below
       *[other] { $count } of them with another size or position, not counted below
    }
reading-spread = { $rating }: median { $median }, quartiles { $lower } and { $upper }, range { $least } to { $most }, { $unrated ->
        [0] none
       *[other] { $unrated }
    } unrated
reading-spread-few = { $rating }: median { $median }, range { $least } to { $most }, { $unrated ->
        [0] none
       *[other] { $unrated }
    } unrated
reading-values = { $spread }; in order: { $values }
reading-none-rated = highest discomfort: not rated at all
reading-change = first three to last three: { $first } to { $last }, { $reaches }
reading-change-neither = no meaningful change
reading-change-points = a meaningful change by 2 points, not by 30 %
reading-change-share = a meaningful change by 30 %, not by 2 points
reading-change-both = a meaningful change by 2 points and by 30 %
reading-about-change = Change compares the medians of the first three and the last three ratings, from { $least } ratings on (common practice, no source). Meaningful is 2 points or 30 % (Farrar 2001, Pain 94:149: averages of people with lasting pain).
reading-settled = settled by the next day, where asked: yes { $yes }, not yet { $notyet }, rather not say { $unsaid }

reading-practices = Besides
reading-practice = { $name }: { $sessions ->
        [one] once
       *[other] { $sessions } times
    } on { $days ->
        [one] 1 day
       *[other] { $days } days
    } (plan now: { $schedule })

reading-stopped-heading = Stopped or not started
reading-stopped-session = { $day }, { $used }: { $ended }, after { $minutes } min; { $peak }

reading-different = Another size or position than the step's
reading-different-session = { $day }: { $used } instead of { $step }; { $peak }

reading-suggestions = What the rule suggested, and the choice
reading-suggestion = { $day }: { $said }; { $chosen }
reading-tried = chose to try
reading-stayed = chose to stay
reading-not-answered = no choice told
reading-stays-shown = { $count ->
        [one] besides, once: stay
       *[other] besides, { $count } times: stay
    }

reading-own-steps = Steps that no suggestion led to
reading-step-own = { $day }: { $step }, own choice
reading-step-clinician = { $day }: { $step }, said by the clinician
reading-step-asked = { $day }: { $step }, told when asked which step is in use

reading-kept = How the diary was kept
reading-lowered = { $day }: { $rating } first { $old }, put right to { $new } on { $changed }
reading-rating-taken-out = { $day }: { $rating } first { $old }, taken out on { $changed }
reading-late = { $count ->
        [one] 1 session written down more than { $hours } hours after it began (the plan's number)
       *[other] { $count } sessions written down more than { $hours } hours after they began (the plan's number)
    }; such sessions earn no step
reading-late-session = { $day }, written on { $written }
reading-left-out = { $count ->
        [one] 1 entry was left out afterwards
       *[other] { $count } entries were left out afterwards
    }; sessions among them: { $sessions ->
        [0] none
       *[other] { $sessions }
    }
reading-left-out-session = { $day }: { $told }
reading-accepted = { $day }, accepted knowingly: { $plan }
reading-accepted-now = accepted knowingly: { $although }
reading-although-unsigned = nobody had signed it
reading-although-other-key = it was signed with another key than the one known before
reading-although-older = it is an older revision than the one in use then
reading-although-same = it has the number of the revision in use then, and says something else
reading-missing = { $count ->
        [one] 1 entry is missing: the diary's file was damaged
       *[other] { $count } entries are missing: the diary's file was damaged
    }
reading-erased = { $count ->
        [one] Something was erased once; nothing tells what
       *[other] Something was erased { $count } times; nothing tells what
    }
reading-restored = { $count ->
        [one] Restored from a backup once; what came after that backup is not in it
       *[other] Restored from a backup { $count } times; what came after each backup is not in it
    }

reading-time-off = Time off
reading-off = { $from } to { $to }

reading-talks = Talks, and signs noted before
reading-noted = { $day }: “{ $sign }” ({ $tier }); no longer open
reading-noted-only = { $day }: “{ $sign }” ({ $tier })
reading-talk = { $day }: spoke with { $with }
reading-talk-closed = closed: “{ $sign }”
reading-talk-go-on = and was told to go on

reading-function = Activities (0 unable to 10 as before) and goals (-2 to 2, 0 as expected)
reading-followed = { $name }: { $ratings }
reading-rating-on = { $number } ({ $day })
reading-function-changed = mean of { $activities ->
        [one] the activity rated at least twice
       *[other] the { $activities } activities rated at least twice
    }: { $first } at first, { $last } at last; more than error (at least { $least }, MDC90: Stratford 1995)
reading-function-not-changed = mean of { $activities ->
        [one] the activity rated at least twice
       *[other] the { $activities } activities rated at least twice
    }: { $first } at first, { $last } at last; within error (less than { $least }, MDC90: Stratford 1995)
reading-attainment = goal attainment T { $score } over { $goals } goals of equal weight; 50 is as expected (Turner-Stokes 2009)

reading-notes = Notes
reading-note = { $day }: { $note }
reading-notes-folded = { $count ->
        [one] 1 note, folded
       *[other] { $count } notes, folded
    }

reading-rule = What the rule said when this was made, in the words the person sees
reading-outcome-pause = Pause the trainers and call.
reading-outcome-back = Go back to { $step }.
reading-outcome-stay = Stay.
reading-outcome-stay-tell = Stay, and tell the clinician: a step back was met on the first step.
reading-outcome-talk = Ready to talk about what comes next.
reading-outcome-up = Could try { $step }.
reading-no-rule = There is no rule for the present step.
reading-whose = The rule of { $clinician }, revision { $revision } of { $day }. Frond has none of its own.
reading-reason = { $criterion }: { $verdict }
reading-replay-same = Replayed here from the entries, the rule says the same.
reading-replay-differs = Replayed here from the entries, the rule says something else than on the phone. Compare the versions of Frond before relying on either.
reading-replay-narrowed = It was worked out on the phone from the whole diary, and cannot be replayed from what is here.

reading-self-reported = Everything here is self-reported. Ratings are whole numbers that lean on the day before; medians and ranges say no more than that.
reading-does-not-decide = This reading does not decide anything and replaces no examination. Who hands over less may have a reason; ask, do not assume.
reading-practice-decides = Licensed practice and local codes decide what happens next.
