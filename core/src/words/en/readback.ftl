# A whole programme said back, sentence by sentence, so that it can be checked before it is used. Read by the
# clinician and, for whoever wants every line, under the cards when a plan is accepted.

readback-head = This is revision { $revision } of the programme "{ $id }", for { $whom }: { $who }.
readback-head-plain = This is revision { $revision }, for { $whom }: { $who }.
readback-adult = an adult
readback-younger = someone not yet adult; the clinician confirms that local safeguarding was followed
readback-author = It was written by { $name }, { $clinic }, and issued on { $at }; its own texts are in the language "{ $language }".
readback-author-plain = It was written by { $name }, { $clinic }, on { $day }.
readback-review = The clinician looks at it again by { $day }; after that day nothing suggests going up until then.
readback-contact = Contact: { $name }, telephone { $phone }, { $hours }. If nobody answers: { $advice }
readback-out-of-hours = Outside those hours: { $advice }
readback-out-of-hours-phone = Outside those hours: { $advice } Telephone { $phone }.
readback-emergency = In an emergency in this country, { $country }: { $number }. Elsewhere the local number is right.

readback-no-steps = There are no steps.
readback-steps = { $count ->
        [one] There is { $count } step, lowest first.
       *[other] There are { $count } steps, lowest first.
    }
readback-steps-from = { $count ->
        [one] There is { $count } step, lowest first, beginning at { $step }.
       *[other] There are { $count } steps, lowest first, beginning at { $step }.
    }
readback-step = Step { $number } (id { $id }), "{ $name }": { $practice }, { $position }. { $parts }. { $schedule }.
readback-step-plain = Step { $number }, "{ $name }": { $practice }, { $position }. { $parts }. { $schedule }.
readback-step-maintain = This step keeps what there is; nothing suggests going beyond it.
readback-step-gate = Going beyond this step is talked about first.
readback-step-named = step { $number }, "{ $name }"
readback-step-unknown = step "{ $id }", which is not there
readback-instruction = Instruction: { $text }
readback-part-trainer = trainer "{ $label }", { $size }, for { $minutes }
readback-part-plain = without a trainer, for { $minutes }
readback-widest = { $mm } mm ({ $cm } cm) widest diameter
readback-practice = Practice "{ $name }" ({ $practice }): { $minutes }, { $schedule }.
readback-breath = One breath: { $phases }.
readback-breath-in = in for { $seconds } s
readback-breath-hold = hold for { $seconds } s
readback-breath-out = out for { $seconds } s
readback-breath-rest = rest for { $seconds } s
readback-schedule = { $weekly }, at most { $daily } a day
readback-schedule-rest = { $weekly }, at most { $daily } a day, with at least { $rest } of rest in between
readback-quoted = "{ $text }"

readback-no-rule = There is no rule: nothing is suggested.
readback-on-every-step = On every step
readback-on-other-steps = On every step without a rule of its own
readback-on-step = On step { $number }, by its own rule
readback-up = { $on }: go up one step when all of these are true:
readback-up-never = { $on }: going up is never suggested.
readback-back = { $on }: come back when any of these is true, to the lowest step named if several are:
readback-pause = { $on }: pause and call, until the clinician was spoken with, when any of these is true:
readback-gap = { $on }: after { $days } without a session, what counts towards going up starts afresh.
readback-item = - { $what }.
readback-up-days-on-step = the step began at least { $days } ago, days of time off left out
readback-up-sessions = within the last { $within }, today included, there was a full session on at least { $days }
readback-up-discomfort = in the last { $sessions }, and in every other session since the first of them, { $rating } was rated { $number } or less of 10
readback-up-sign-free = for { $days } no sign beyond one only noted was reported or cleared, and the first programme was accepted at least as long ago
readback-up-feels-ready = asked since the last session "would you like to try the next step?", the person said yes
readback-back-to = { $when }: { $where }
readback-to-before = to the step before
readback-to-first = to the first step
readback-to-step = to { $step }, or to the step before where that is not earlier
readback-steps-back = { $times ->
        [one] within the last { $within }, today included, there was at least { $times } change to an earlier step
       *[other] within the last { $within }, today included, there were at least { $times } changes to an earlier step
    }
readback-rated-at-least = { $among } { $rating } was rated { $number } or more of 10
readback-stopped = { $among } practice was stopped or could not start, interruptions left out
readback-absent = there was no session for { $days }
readback-among-last = in the last session
readback-among = in at least { $sessions } of the last { $last } sessions

readback-full-session = A full session is one on the current step that was finished, with at least the least minutes on its last part, a rating of the highest discomfort, no sign beyond one only noted, and written down within { $hours } of its beginning.
readback-late = A session written down later than { $hours } after it began is marked late.
readback-asked = At each session these are rated from 0 to 10: { $ratings }.
readback-screening = The full list of cautions is asked every { $days }.
readback-activities = The person rates from 0 to 10 how able they are: { $activities }.
readback-activities-every = The person rates from 0 to 10, every { $days }, how able they are: { $activities }.
readback-goals = Goals: { $goals }.
readback-sign-stricter = The sign "{ $sign }" is taken more seriously than usual: { $tier }.
readback-spotting = Spotting, a few drops of blood, is only noted in this programme.
readback-sign-seen = The clinician has seen the sign "{ $sign }" of entry { $entry } and closes it with this revision.
readback-sign-seen-plain = The clinician has seen the sign "{ $sign }" and closes it with this revision.
readback-own-caution = The clinician's own caution: { $caution }
readback-numbers-folded = Sizes and counts stay folded on Today until they are opened.
readback-grounding-first = Eyes-open grounding is offered before each trainer session.
readback-contact-on-stop = The contact is offered whenever a session was stopped.
readback-recipient = A summary may be sealed to { $name }, key { $key }.
readback-recipient-plain = A summary may be sealed to { $name }, whose key ends in { $end }.

readback-rating-peak = the highest discomfort
readback-rating-before = discomfort before
readback-rating-after = discomfort after
readback-rating-worry = worry
readback-practice-trainer = trainer practice
readback-practice-breathing = slow breathing
readback-practice-belly-breathing = belly breathing
readback-practice-meditation = meditation
readback-practice-other = other practice "{ $id }"
readback-practice-other-plain = another practice
readback-on-back = lying on the back
readback-side-lying = lying on the side
readback-sitting = sitting
readback-standing = standing
readback-position-other = in the position the instruction says
readback-tier-note = it is noted only
readback-tier-ask-first = ask before going on
readback-tier-stop = stop and call the contact
readback-tier-emergency = stop and call the emergency number

readback-days = { $count ->
        [one] { $count } day
       *[other] { $count } days
    }
readback-whole-days = { $count ->
        [one] { $count } whole day
       *[other] { $count } whole days
    }
readback-different-days = { $count ->
        [one] { $count } different day
       *[other] { $count } different days
    }
readback-hours = { $count ->
        [one] { $count } hour
       *[other] { $count } hours
    }
readback-full-sessions = { $count ->
        [one] { $count } full session
       *[other] { $count } full sessions
    }
readback-times = { $count ->
        [one] once
       *[other] { $count } times
    }
readback-at = { $day } at { $time }
readback-at-zone = { $day } at { $time }, { $zone }
