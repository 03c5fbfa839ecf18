# A programme on its way: signing, key words, what changes when another comes.
