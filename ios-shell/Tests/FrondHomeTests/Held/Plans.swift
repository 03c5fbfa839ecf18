import Foundation
import Testing

/// Invented plans, made from the project's fixtures. Nobody's advice.
enum Plans {
    static func fixture(_ path: String) throws -> Data {
        let here = URL(fileURLWithPath: #filePath)
        let project = (0..<5).reduce(here) { url, _ in url.deletingLastPathComponent() }
        return try Data(contentsOf: project.appendingPathComponent("fixtures").appendingPathComponent(path))
    }

    /// The graded plan, with a rule that may speak after one session, a breath that is held, and questions of its own.
    static func quick() throws -> Data {
        var plan = try object(json(String(decoding: fixture("programmes/1-graded-then-positions.json"), as: UTF8.self)))
        var rule = try object(plan["rule"])
        rule["step_up"] = try json(
            """
            {"all_of": [{"criterion": "sessions", "practised_days": 1, "within_days": 7},
                        {"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 1},
                        {"criterion": "feels_ready"}]}
            """)
        plan["rule"] = rule
        // It does not run out while the test lives in its own time.
        plan["review_by"] = "2099-12-31"
        var practices = try #require(plan["practices"] as? [Any])
        var first = try object(practices[0])
        var breath = try object(first["breath"])
        breath["hold_in_tenths"] = 20
        first["breath"] = breath
        practices[0] = first
        plan["practices"] = practices
        plan["ratings_asked"] = ["before", "worry"]
        plan["activities"] = ["Sitting through a film"]
        plan["goals"] = ["An examination without fear"]
        plan["manner"] = try json(#"{"numbers_folded": false, "grounding_first": true, "contact_on_stop": true}"#)
        return try JSONSerialization.data(withJSONObject: plan)
    }

    private static func json(_ text: String) throws -> Any { try JSONSerialization.jsonObject(with: Data(text.utf8)) }

    private static func object(_ value: Any?) throws -> [String: Any] { try #require(value as? [String: Any]) }
}
