// A file that is chosen with the phone's own picker. Its bytes wait in memory until the form is sent or left.
import Foundation
import FrondHome
import SwiftUI

struct FileField: View {
    @Environment(Page.self) private var page
    let line: FormLine
    let opening: Opening

    var body: some View {
        let name = line.field.key
        let fields = page.words.fields
        Labelled(name, line.label, hint: line.hint) {
            Press(fields.chooseFile, .equal, spoken: "\(fields.chooseFile): \(line.label)") {
                Task { await choose(name) }
            }
            .reached(name)
            if page.drafts.value(name, or: Data?.none) != nil { Words(fields.fileChosen) }
        }
    }

    /// What could not be read is said at its place; where nothing was chosen, what was there stays.
    private func choose(_ name: String) async {
        switch await page.duties.choose(opening) {
        case .bytes(let bytes):
            page.drafts.set(name, bytes)
            page.touched(name)
            page.go.mended(name)
            tell(page.words.fields.fileChosen)
        case .tooLarge: page.send(.wrong([Wrong(field: name, says: page.words.files.tooLarge)]))
        case .unreadable: page.send(.wrong([Wrong(field: name, says: page.words.files.unreadable)]))
        case nil: break
        }
    }
}
