# What the clinician's rule says now, and why. Nothing reads as an order; staying is never a failure.

suggestion-title = What your plan says now
suggestion-step = { $name } ({ $used })
suggestion-step-up = At your next session you could try: { $step }.
suggestion-equal = Trying and staying are both right. It is for the next session only.
suggestion-step-back = At your next session, go back to: { $step }.
suggestion-step-back-kind = Going back looks after you. Steps come again.
suggestion-hold = Stay with what you use now.
suggestion-hold-kind = Staying is part of the plan. There is no hurry.
suggestion-tell-clinician = Tell { $clinician } how it has been. A talk would help now.
suggestion-talk = You are ready to talk with { $clinician } about what comes next. Until then, stay with what you use now.
suggestion-pause = Trainers are paused. Look at whom to call.
suggestion-whose = This is the rule of { $clinician }, revision { $revision } of { $date }. Frond has no rule of its own.
suggestion-no-programme = There is no plan yet, so there is nothing to suggest.
suggestion-no-steps = Your plan has no steps, so there is nothing to suggest. Breathing and rest are the plan.
suggestion-no-rule = Your plan has no rule for this step. Ask your clinician what comes next.

reason-step-up = To try the next step, all of these:
reason-step-back = To go back, any one of these:
reason-pause = To pause and call, any one of these:
reason-met = yes
reason-not-yet = not yet
reason-not-so = no
reason-unknown = cannot be told
reason-session = { $date }
reason-session-rated = { $date }: { $rating } { $number }
reason-session-unrated = { $date }: { $rating } not rated
reason-an-entry = An earlier entry
reason-earlier = { $count ->
        [one] One earlier session
       *[other] { $count } earlier sessions
    }

criterion-days-on-step = { $days ->
        [one] { $days } day on this step
       *[other] { $days } days on this step
    }, days off left out
criterion-sessions = Full sessions on { $days ->
        [one] { $days } day
       *[other] { $days } days
    } within { $within ->
        [one] { $within } day
       *[other] { $within } days
    }
criterion-at-most = { $last ->
        [one] At most { $number } as { $rating } in the last full session, and in every session since
       *[other] At most { $number } as { $rating } in the last { $last } full sessions, and in every session since the first of them
    }
criterion-sign-free = { $days ->
        [one] { $days } day
       *[other] { $days } days
    } without anything to call about
criterion-feels-ready = You would like to try the next step
criterion-at-least = { $last ->
        [one] { $number } or more as { $rating } in the last session
       *[other] { $number } or more as { $rating } in { $sessions } of the last { $last } sessions
    }
criterion-stopped = { $last ->
        [one] The last session stopped or not started
       *[other] { $sessions } of the last { $last } sessions stopped or not started
    }
criterion-days-without = { $days ->
        [one] { $days } day
       *[other] { $days } days
    } without practice
criterion-steps-back = { $times ->
        [one] Once
       *[other] { $times } times
    } to an earlier step within { $within ->
        [one] { $within } day
       *[other] { $within } days
    }

missing-days-on-step = { $days ->
        [one] { $days } more day on this step
       *[other] { $days } more days on this step
    }
missing-sign-free-days = { $days ->
        [one] { $days } more day without anything to call about
       *[other] { $days } more days without anything to call about
    }
missing-practised-days = { $days ->
        [one] { $days } more day with a full session
       *[other] { $days } more days with a full session
    }
missing-full-sessions = { $sessions ->
        [one] { $sessions } more full session
       *[other] { $sessions } more full sessions
    }
missing-smaller-last = Practise this size again first
missing-comfort = A little more time for it to feel easier
missing-ratings = { $sessions ->
        [one] One session has no rating; that is fine, and the plan waits
       *[other] { $sessions } sessions have no rating; that is fine, and the plan waits
    }
missing-answer = Your own word on whether you would like to
missing-clock = The clock has to be confirmed first

bar-not-known = Something could not be told, so the plan waits.
bar-clock = Confirm the time first; until then the plan waits.
bar-step-not-confirmed = Confirm what you use now; until then the plan waits.
bar-review-passed = The plan was due to be looked at again; until then it stays as it is.
bar-stay = For now, this step.
bar-entries-missing = Entries may be missing; the plan waits until you have spoken with your clinician.
bar-restore = Say what you use now; until then the plan waits.
bar-maintain = The plan is to keep what there is.
