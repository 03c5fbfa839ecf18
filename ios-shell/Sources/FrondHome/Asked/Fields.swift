// What a field of the core's forms is called here, and what the core says has to be put right.

extension FormField {
    /// Its name.
    public var key: String {
        switch self {
        case .code: "code"
        case .new: "new"
        case .again: "again"
        case .word(let place): "word-\(place)"
        case .phrase: "phrase"
        case .file: "file"
        case .link: "link"
        case .spokenWords: "spoken-words"
        case .from: "from"
        case .to: "to"
        case .way: "way"
        case .knowing: "knowing"
        }
    }
}

extension View {
    /// What the core says has to be put right in the form that is shown.
    func problems(_ words: FormWords) -> [Wrong] {
        if case .screen(.screening(let screen)) = self { return screen.missing(words) }
        let problems: [Problem] =
            switch self {
            case .whole(.code(let screen)): screen.problems
            case .whole(.setCode(let screen)): screen.problems
            case .whole(.phraseCheck(let screen)): screen.problems
            case .whole(.openByPhrase(let screen)): screen.problems
            case .whole(.restoreCopy(let screen)): screen.problems
            case .whole(.eraseDays(let screen)): screen.problems
            case .whole(.addPlan(let screen)): screen.problems
            case .screen(.summary(let screen)): screen.problems
            default: []
            }
        return problems.map { Wrong(field: $0.field.key, says: $0.says) }
    }
}
