# Logging a session.

log-title = Log a session
log-practice = What did you do?
log-size = Which size did you use? Look at the trainer, not at the plan.
log-size-other = Your plan has no such size. Is this what the trainer you used really measures across?
log-position = In which position?
log-minutes = For how many minutes, pauses left out?
log-ended = How did it end?
log-finished = Finished
log-stopped = Stopped: { $reason }
log-could-not-start = Could not start: { $reason }
log-reason-discomfort = discomfort
log-reason-did-not-go-in = it did not go in
log-reason-upset = I was upset
log-reason-interrupted = something came between
log-reason-other = another reason
log-ask-before = How much discomfort was there before you started?
log-ask-peak = What was the highest discomfort?
log-ask-after = How much discomfort was there afterwards?
log-ask-worry = How worried were you?
log-rating-least = none
log-rating-most = worst imaginable
log-rather-not-say = Rather not say
log-note = A note for yourself, if you like

# Reporting that something is not right.

signs-title = Is something not right?

stop-title = Stop and call
stop-title-note = Noted

# Writing down a talk.

spoke-title = I spoke with …
spoke-nothing-open = Nothing is open. You can still write down a talk.
spoke-with = With whom?
spoke-when = When?
spoke-sign = { $sign }, noted { $when }
spoke-pause = The trainers are paused. Did the person you spoke with say that you may go on?
spoke-note = Only the person you spoke with decides whether you may go on. Frond does not.

# The whole list of questions about health.

screening-title = A few questions about your health
screening-left = { $count ->
        [one] One question has no answer yet. “Not sure” is an answer.
       *[other] { $count } questions have no answer yet. “Not sure” is an answer.
    }
