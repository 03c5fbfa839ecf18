// What was written, newest first, and one entry with everything that became of it.
import FrondHome
import SwiftUI

struct EntriesView: View {
    let screen: EntriesScreen

    var body: some View {
        Title(screen.title)
        Says(screen.empty)
        Also(screen.actions)
        // Ten years are thousands of entries: they are laid out as far as she reads.
        LazyVStack(alignment: .leading, spacing: Tokens.Space.s3) {
            ForEach(screen.entries, id: \.id) { line in
                Box(line.when) {
                    Says(line.text)
                    Quiet(line.notes)
                    Also([Offer(line.opens, spoken: "\(line.opens.label), \(line.when)")])
                }
            }
        }
    }
}

struct EntryView: View {
    let screen: EntryScreen

    var body: some View {
        Title(screen.title)
        Quiet(screen.when)
        Says(screen.says)
        Quiet(screen.notes)
        Says(screen.nobodyTold)
        if !screen.versions.isEmpty { Heading(screen.versionsTitle) }
        ForEach(screen.versions.indices, id: \.self) { at in
            Box(screen.versions[at].written) { Says(screen.versions[at].says) }
        }
        Also(screen.actions)
    }
}
