# Breathing, practising with a clock, and what is shown after a stop.

## Breathing.

breathing-even-name = Even breathing
breathing-even-how = Breathe in while you count slowly to five, and out while you count slowly to five. Nothing is held.
breathing-cue-in = In
breathing-cue-out = Out
breathing-cue-hold = Hold softly
breathing-cue-over = That was the last breath. Breathe as you like.
breathing-softly = Breathe softly. It does not have to be deep.
breathing-may-relax = Slow breathing may help you relax. If it does not feel good today, leave it.
breathing-refused-fast = The breathing in your plan is too fast to follow here. Ask your clinician about it. Until then there is even breathing.
breathing-refused-slow = The breathing in your plan is too slow to follow here. Ask your clinician about it. Until then there is even breathing.
breathing-refused-incomplete = The breathing in your plan is not complete. Ask your clinician about it. Until then there is even breathing.

belly-lie = Lie on your back. Let your lower legs rest on a chair or on cushions, so that hips and knees are bent at about a right angle.
belly-hands = Put one hand just below your ribs, and the other on your chest.
belly-breathe = Let the lower hand rise a little as the air comes in, and sink as it goes out. The hand on your chest stays fairly still.
belly-otherwise = If lying on your back does not feel good, choose another way to lie or sit. What your clinician told you comes first.

breathing-title = Breathing
breathing-refused = { $name }: { $why }
breathing-rhythm-in = { $seconds ->
        [one] in { $seconds } second
       *[other] in { $seconds } seconds
    }
breathing-rhythm-out = { $seconds ->
        [one] out { $seconds } second
       *[other] out { $seconds } seconds
    }
breathing-rhythm-hold = { $seconds ->
        [one] hold softly { $seconds } second
       *[other] hold softly { $seconds } seconds
    }
breathing-cues = Tell a change of breath without looking
breathing-cue-tone = A soft tone
breathing-cue-vibration = A short buzz
breathing-cue-word = A spoken word
belly-title = How to lie for belly breathing

hold-questions-title = Holding your breath

## What to practise.

practices-title = What would you like to do?
practices-empty = There is nothing else to do with a clock now.
anything-new-not-sure = Not sure? Choose “Something”. That is fine.

## Practising with a clock.

timed-ready = Begin when you are ready.
timed-least-reached = Your plan asks for at least this long. You can end here, or go on for as long as it feels all right.
timed-part-over = This part is over, and the clock has stopped. Take your time. The next part begins when you say so.
timed-all-over = The time is over. Take your time with what comes next.
timed-paused = Paused. The clock stands still.
timed-begin = Begin
timed-pause = Pause
timed-go-on = Go on
timed-part-done = This part is enough
timed-smaller = Use a smaller one
timed-stop = Stop

found-title = Your practice was interrupted
found-began = It began { $when }.
found-counted = { $minutes ->
        [0] Less than a minute is certain.
        [one] It is certain that you practised for { $minutes } minute.
       *[other] It is certain that you practised for { $minutes } minutes.
    }
found-only-certain = Only the time that is certain is counted. If you practised for longer, you can write that down yourself.
found-go-on = Go on from here
found-finish = End it, and keep the time that is certain
found-discard = Leave it out

running-unreadable = Your practice was interrupted, and what was noted of it cannot be read. Nothing else is harmed. You can write it down yourself.
running-update = This practice was begun in a newer Frond. Update Frond to go on with it. Nothing was changed.
running-not-kept = This could not be noted. Your practice goes on; write it down yourself when you have ended.

found-put-away = Put it away

running-part = Part { $number } of { $parts }
running-clock = { $minutes } { $seconds }
running-seconds = { $seconds ->
        [one] { $seconds } second
       *[other] { $seconds } seconds
    }

## How it was.

rate-title = How was it?
rate-why = Why did you stop? You can leave this out.
rate-really-used = If you used something else, or for another time, choose “Something was different”.
rate-keep = Keep
rate-keep-and-tell = Keep, and tell that something is not right

## After a stop.

stopped-something = Yes
stopped-not-sure = Not sure
stopped-nothing = No
stopped-later = I do not want to answer now
stopped-then-breathe = When you feel steady, you can let your breath come and go for a while, softly and as it likes. Only if you want to.
stopped-call = If you would like to talk to someone: { $clinician }, { $contact }. Hours: { $hours }.
stopped-out-of-hours = Outside these hours: { $line }
stopped-call-own-doctor = If you would like to talk to someone, your own doctor is there for this too.
stopped-tomorrow = The rest can wait until tomorrow.
