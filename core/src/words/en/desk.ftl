# The desk as a whole: keys, opening, the way around.

desk-banner = About this desk
desk-banner-says = This is your desk.
desk-decides-nothing = Frond gives no advice and has no dose of its own. Every number in a plan is yours, within your licence and the rules of your place.
desk-no-way-in = This page opens only with the address that Frond printed, and only once. Start frond desk again for a new one.
desk-not-found = There is no such page. Go back to the desk.
desk-back-home = To the desk
desk-back = Back
desk-later = Later
desk-home-title = Your desk
desk-lock = Lock the desk

desk-first-title = Keys for your desk
desk-first = Frond makes keys for you: one signs the plans you hand over, so that a phone can tell them from anybody else's; one opens the summaries that are sealed to you. They stay on this computer, under a passphrase.
desk-first-forgotten = A forgotten passphrase cannot be found out by anyone, Frond included. What is sealed to you then stays closed.
desk-make-keys = Make keys
desk-passphrase = Passphrase
desk-passphrase-now = Your passphrase now
desk-new-passphrase = New passphrase
desk-new-passphrase-hint = Several words that only you would put together. Whoever has the files of this desk can try as often as they like.
desk-restore = Take over keys from a copy
desk-restore-title = Keys from a copy
desk-restore-how = Choose the file that was kept as a copy of your keys, and give the passphrase that it was made under.
desk-copy-file = The copy of your keys, as a file

desk-open-title = Open your desk
desk-open = Open
desk-open-forgotten = If the passphrase is forgotten: a copy of the keys made under an older passphrase opens with that one, in another folder (frond desk --folder).

desk-keys = Keys
desk-keys-are = These keys sign your plans and open what is sealed to you.
desk-not-copied = There is no copy of your keys yet. If this computer is lost, nobody can open what was sealed to you, and phones will not know your next plan.
desk-copied = A copy of these keys was looked at, and it opens.
desk-recipient = For those who seal something to you
desk-recipient-is = This line may be given to anyone. Whoever has it can seal a summary to you, and cannot open one. Your plans carry it when you name yourself as a reader.
desk-copy = Make a copy of your keys
desk-copy-title = A copy of your keys
desk-copy-how = Save this file away from this computer, on something you lock away. It opens only with your passphrase.
desk-copy-save = Save the copy
desk-copy-look-title = Does the copy open?
desk-copy-look-how = Choose the file where you put it. Frond looks whether it opens and holds your keys.
desk-copy-look = Look at the copy
desk-change-passphrase = Change the passphrase
desk-change-passphrase-how = The new one opens this desk from now on. Copies made before still open with the old one; make a new copy, and destroy those.
desk-new-keys = Make new keys
desk-new-keys-when = New keys are for when somebody else may know the old ones, or your rules ask for it.
desk-new-keys-signed = The old key signs the new one, so a phone that knows you shows the change and asks. What was sealed to the old keys still opens here.
desk-new-keys-limit = Whoever has the old keys can still open what was sealed to them, and could sign too. Tell your people by word of mouth, and compare the key words.

desk-error-keys-there = There are keys already; nothing was changed. Open the desk with its passphrase.
desk-error-keys-none = There are no keys here. Make them first, or take them over from a copy.
desk-error-passphrase = This passphrase does not open it. Check capital letters and the keyboard, and try again.
desk-error-empty-passphrase = Write the passphrase.
desk-error-not-keys = This file holds no keys, or is damaged. Choose the file that was kept as a copy of the keys.
desk-error-newer = This was written by a newer Frond. Update Frond to use it.
desk-error-other-keys = This is a copy of other keys than those of this desk. Save the copy again, and choose that file.
desk-error-not-sealed = The keys could not be sealed; nothing was changed. Try again.
desk-error-full = The disk is full; nothing was changed. Make room and try again.
desk-error-folder = The folder of the desk cannot be read or written. Check that it is there and is yours, and try again.
