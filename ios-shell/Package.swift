// swift-tools-version: 6.0
// The app without its screens: what can be decided without SwiftUI and UIKit. It needs Foundation alone, so it is built and
// tested where there is no Mac. `tools/core` makes what lies in made/ first.
import Foundation
import PackageDescription

let here = Context.packageDirectory
let made = here + "/made"
let linked = ["-L", made] + ["-rpath", made, "--allow-shlib-undefined"].flatMap { ["-Xlinker", $0] }

/// Everything below a folder but what is named.
func others(in folder: String, but kept: [String]) -> [String] {
    let all = (try? FileManager.default.contentsOfDirectory(atPath: here + "/" + folder)) ?? []
    return all.filter { !$0.hasPrefix(".") && !kept.contains($0) }.map { folder.isEmpty ? $0 : folder + "/" + $0 }
}

let package = Package(
    name: "FrondHome",
    platforms: [.iOS(.v17), .macOS(.v14)],
    products: [.library(name: "FrondHome", targets: ["FrondHome"])],
    targets: [
        .systemLibrary(name: "frond_mobileFFI"),
        // The generated Swift of the core, and the one type that it is told to use.
        .target(
            name: "FrondCore",
            dependencies: ["frond_mobileFFI"],
            path: ".",
            exclude: others(in: "", but: ["made", "Sources", "Package.swift"])
                + others(in: "made", but: ["FrondCore.swift"]) + others(in: "Sources", but: ["FrondCore"]),
            sources: ["made/FrondCore.swift", "Sources/FrondCore"],
            linkerSettings: [
                // A phone's library is named by the Xcode project.
                .unsafeFlags(linked, .when(platforms: [.linux])),
            ]
        ),
        .target(name: "FrondHome", dependencies: ["FrondCore"]),
        .testTarget(name: "FrondHomeTests", dependencies: ["FrondHome"]),
    ],
    swiftLanguageModes: [.v6]
)
