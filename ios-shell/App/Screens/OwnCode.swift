// The app's own code is chosen, changed or taken away. What is typed leaves the field as soon as it is sent.
import FrondHome
import SwiftUI

struct SetCodeView: View {
    @Environment(Page.self) private var page
    let screen: SetCodeScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        SecretField(form: screen.set.new)
        SecretField(form: screen.set.again) { page.send { screen.keep($0) } }
        Next(screen.set.submit) { page.send { screen.keep($0) } }
        if let form = screen.remove {
            Box(form.title) {
                Says(form.says)
                if let wait = form.wait {
                    Waiting(wait: wait, then: .codeForm)
                } else {
                    SecretField(form: form.code) { page.send { screen.takeAway($0) } }
                    Press(form.submit, .equal) { page.send { screen.takeAway($0) } }
                }
            }
        }
        Also(screen.actions)
    }
}
