# What only a phone needs: before the lock, the code, the diary as a whole, hints of forms, what is said aloud.
# Words that leave Frond stand in leaving.ftl.

## Before the lock. Anyone may read it: nothing says what the program is for; a test holds it against the
## list of health words.

phone-empty-title = Nothing is here yet
phone-empty-says = What you write here stays on this phone, and nothing is sent. You can begin right away.
phone-empty-copy = I have a copy from before
phone-code-title = Your code
phone-code-asks = Type the code that you chose.
phone-code = Code
phone-code-open = Open
phone-code-forgotten = I do not know the code
phone-code-wait-seconds = { $count ->
        [one] You can try again in one second.
       *[other] You can try again in { $count } seconds.
    }
phone-code-wait-minutes = { $count ->
        [one] You can try again in one minute.
       *[other] You can try again in { $count } minutes.
    }
phone-code-wait-nothing-lost = Nothing is lost, however often you try.
phone-error-code-missing = Type the code first.
phone-error-code-wrong = This is another code. Try again; nothing is lost.

## The code.

action-code-choose = Choose a code
action-code-change = Change the code
action-lock = Lock now
phone-code-what = With a code, Frond asks for it when it is opened, and again when you come back to it after a while. Without one, whoever can unlock this phone can open your diary.
phone-code-own = A code is a lock of its own, beside the lock of the phone. Choose one that opens nothing else and that others do not know.
phone-code-no-wipe = A wrong code erases nothing. After some of them there is a wait.
phone-code-phrase-first = There are no such twelve words yet. It is best to make them first.
phone-code-new = New code
phone-code-new-hint = Digits, letters or words. The longer it is, the harder it is to guess.
phone-code-again = The same code once more
phone-code-keep = Use this code
phone-code-remove-title = Do without a code
phone-code-remove-says = Then Frond asks for nothing, and whoever can unlock this phone can open your diary.
phone-code-now = The code you use now
phone-code-remove = Take the code away
phone-code-set-title = Done
phone-code-set = Frond asks for this code from now on.
phone-code-removed = Frond asks for no code from now on.
phone-error-code-short = { $least ->
        [one] Choose at least one digit or letter.
       *[other] Choose at least { $least } digits or letters.
    }
phone-error-codes-differ = The two codes are not the same. Type the new code twice.

## What a phone says of its lock, beside what is said of every diary.

phone-lock-key = Your diary is locked with a key that stays in this phone. Whoever takes its files away cannot open them.
phone-lock-no-code = It has no code of its own yet. Whoever can unlock this phone can open it.
phone-lock-code = Frond also asks for your code. Nobody else has it, and Frond does not keep it.
phone-lock-code-title = The code
phone-lock-phrase-none = There is none yet. Twelve words on paper open your diary when this phone is gone or the code is forgotten. Without them it is lost then.
phone-lock-limit-forgotten = A forgotten code cannot be found out by anyone, Frond included. Only the recovery phrase helps then.
phone-lock-limit-keys = If the lock of the phone is taken away or the phone is reset, its key may be gone. Then the recovery phrase opens what is left.

## The twelve words.

phone-phrase-alone = Do this when nobody else can see the screen or hear it read out.
phone-phrase-paper = Write on paper, not into this phone. Whoever finds the words can open your diary.
phone-phrase-check = Look at your paper. Then it is sure that the words are there when you need them.
phone-phrase-hint = In their order. Small or large letters do not matter, and the first four letters of each word are enough.
phone-phrase-opens = Type the twelve words from your paper. Afterwards Frond asks for no code until you choose a new one.
phone-phrase-gone = Without these words nobody can open it, Frond included. To begin anew, remove Frond from this phone and install it again. What you wrote is then gone.
phone-phrase-opened = It opened with your twelve words. Frond asks for no code now. You can choose a new one.
phone-phrase-opened-title = Your diary is open
phone-error-other-phrase = These words do not open this diary. Check each word and the order.

## Copies, erasing, a plan.

phone-copy-name = Its name says nothing, but that there is a file can be seen where you put it.
phone-look-first = Looking changes nothing. You are told what is in a copy before it takes the place of anything.
phone-look-into = Look into it
phone-erase-look = Nothing is erased yet. First you are told what would go.
phone-plan-scan = If you were given a code to scan, point the camera of this phone at it and open the link with Frond. If that is not offered, copy the link and paste it below.
phone-erased-rest = No reminder comes any more. What is in a calendar stays there. Frond itself is still on this phone until you remove it.
phone-error-day-missing = Choose a day.
phone-error-link-missing = Choose a file, or paste the link.

## The frame of every screen.

phone-leave = Leave
phone-leave-spoken = Leave at once. Frond closes and is gone from the list of open apps.
phone-hide = Hide
phone-hide-spoken = Hide at once. A screen without content is shown. Frond stays in the list of open apps.
phone-back = Back
phone-loading = One moment
phone-loading-long = This takes a few seconds.
phone-close = Close
phone-fault = Something went wrong inside Frond, and this was not shown. Go back and open it again. What was kept is still there.

## Forms.

phone-required = This is needed.
phone-choose-day = Choose a day
phone-choose-time = Choose a time
phone-no-day = No day is chosen.
phone-no-time = No time is chosen.
phone-empty-again = Leave it empty again
phone-show-secret = Show what I type
phone-hide-secret = Hide what I type
phone-secret-shown = What you type can be seen now.
phone-secret-hidden = What you type is hidden now.
phone-choose-file = Choose a file
phone-file-chosen = A file is chosen.
phone-paste = Paste
phone-clipboard-cleared = The link was taken off the clipboard.
phone-times = At what times? Up to six.
phone-add-time = Add a time
phone-remove-time = Take this time away
phone-error-time-missing = Choose a time.

## Files and calls.

phone-file-where = Where shall it go?
phone-file-share = Share it
phone-file-save = Save it on this phone or in another place
phone-file-sealed = It is sealed. The app you choose sees that there is a file, and not what is in it.
phone-saving = It is being saved.
phone-saved = It is saved. Nobody has been told.
phone-not-saved = Nothing was saved.
phone-error-save = It could not be saved there. Choose another place.
phone-reading = It is being read.
phone-error-large = This file is larger than Frond takes. Choose another one.
phone-error-read = This file could not be read. Choose another one.
phone-no-files = This phone has no app that can choose or keep a file. Nothing was done.
phone-no-calls = This phone has no app for calls. Call this number from another phone.

## Whether the phone may show reminders.

phone-notices-title = May reminders be shown?
phone-notices-why = The phone will ask you whether Frond may show reminders. They say only the plain words that you chose. Everything else works without them.
phone-notices-allow = Let the phone ask
phone-notices-refused = The phone does not let Frond show reminders. Everything else works. You can change that in the settings of the phone.
phone-notices-settings = Open the settings of the phone

## Said aloud, for those who listen or feel.

phone-less = Less
phone-more = More
phone-of-ten = { $number } of 10
phone-figure = { $number }
phone-opened = open
phone-folded = folded
phone-chosen = chosen
phone-not-chosen = not chosen
phone-to-put-right = To put right
phone-clock = Time practised
phone-pacer = A breath to follow
phone-pacer-buzz = One short buzz: breathe in. One long buzz: breathe out. Two short ones: hold softly.
phone-screen-on = The screen stays on while you practise.
