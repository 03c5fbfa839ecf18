package frond.home.screens

import frond.core.FormLine
import frond.home.duties.files.Opening
import frond.home.duties.files.Read
import frond.home.parts.FileField
import frond.home.parts.Wrong
import frond.home.parts.fileField

/** A file of a form, chosen with the phone's own picker; what could not be read is said at its place. [chosen]: one was. */
internal fun Page.file(line: FormLine, opening: Opening, chosen: () -> Unit = {}): FileField =
    fileField(line.field.key(), line.label, line.hint, words.fields.chooseFile, words.fields.fileChosen) { field ->
        phone.chooseFile(opening) { read ->
            when (read) {
                is Read.Bytes -> {
                    field.put(read.bytes)
                    chosen()
                }
                is Read.TooLarge -> right(listOf(Wrong(field.name, words.files.tooLarge)))
                is Read.Unreadable -> right(listOf(Wrong(field.name, words.files.unreadable)))
                null -> Unit
            }
        }
    }
