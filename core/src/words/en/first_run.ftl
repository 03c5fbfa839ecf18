# The first pages. Each can be skipped; none keeps anyone from breathing or from saying that something is wrong.

first-breathe-title = Breathe first
first-breathe = Sit or lie down, and let the breath come and go. In while you count to five, out while you count to five.
first-breathe-no-plan = You need no plan for this, and you need not set up anything first.

first-about-title = What Frond is
first-about-is = A private diary for the exercises your clinician gives you. It shows what today asks and keeps what you did and how it felt.
first-about-plan = Everything it says about going on, staying or going back comes from your clinician's plan. Frond has no numbers of its own.
first-about-not = It is not medical advice, and it does not take the place of a visit or a call.
first-about-clinician = Your clinician's word comes before anything you read here.
first-about-sends-nothing = Frond sends nothing. Nobody sees what you write until you hand it over yourself. If something is wrong, you have to call.
first-about-adults = It is made for adults. If you are younger, use it only with a plan in which your clinician says that it is meant for you.
first-about-right = You can stop at any moment, and stopping is always right.

first-lock-title = What opens your diary
first-lock-opens = Your diary is locked and opens with what you chose for it. Nobody else has it, and Frond does not keep it.
first-lock-beside = This lock is one of its own, beside the lock of the phone. Choose something that opens nothing else and that others do not know.
first-lock-forgotten = If you forget it, nobody can find it out, and the diary stays shut. Twelve words on paper are the only way back in.
first-lock-watched = Whoever can watch you open it can read what you read.

first-language-title = Your language
first-language-later = You can change it at any time in the settings.

first-copy-title = If this phone is lost
first-copy-without = What you write lies on this device alone. Without a copy elsewhere, it is gone when the device is lost or breaks.
first-copy-phrase = First come twelve words that you write down on paper. They open the copy, and they open your diary if you forget what opens it.
first-copy-elsewhere = Then comes the copy. You put it wherever you like. It is sealed: only your twelve words open it.
first-copy-later = You can do this later. It stands under “How the diary is kept”.

action-first-next = Next
action-first-skip = Skip this
action-first-done = To today
