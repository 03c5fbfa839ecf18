// For devices, with the Android SDK and NDK. Never run on the machines the project is tested on, which have neither: see
// README.md. What an app is made of is the same as in pom.xml: the manifest, the resources, the Kotlin, JNA, and the
// core's library with its Kotlin made in the build.
plugins {
    id("com.android.application") version "8.13.0"
    id("org.jetbrains.kotlin.android") version "2.4.21"
}

val root: File = rootDir.parentFile
val made: Provider<Directory> = layout.buildDirectory.dir("made")

android {
    namespace = "frond.home"
    compileSdk = 34

    defaultConfig {
        applicationId = "frond.home"
        minSdk = 26
        targetSdk = 34
        versionCode = 1
        versionName = "0.1.0"
        ndk { abiFilters += listOf("arm64-v8a", "x86_64") }
    }

    sourceSets["main"].apply {
        kotlin.srcDir(made.map { it.dir("kotlin") })
        res.srcDir(made.map { it.dir("res") })
        jniLibs.srcDir(made.map { it.dir("jniLibs") })
    }

    buildTypes {
        release {
            isMinifyEnabled = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "tools/keep.pro")
        }
    }

    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
}

kotlin { jvmToolchain(17) }

dependencies {
    implementation("net.java.dev.jna:jna:5.19.1@aar")
}

// The library for each kind of phone, by cargo-ndk, and its Kotlin made from one of them.
val core by tasks.registering(Exec::class) {
    workingDir = root
    commandLine(
        "cargo", "ndk", "-t", "arm64-v8a", "-t", "x86_64", "-o", made.get().dir("jniLibs").asFile.path,
        "build", "--locked", "--profile", "phone", "-p", "frond-mobile",
    )
    environment("RUSTFLAGS", "-Clink-arg=-Wl,-z,max-page-size=16384")
}

val kotlinOfTheCore by tasks.registering(Exec::class) {
    workingDir = projectDir
    commandLine("tools/core", made.get().asFile.path)
}

val look by tasks.registering(Exec::class) {
    workingDir = projectDir
    commandLine("tools/look", root.resolve("bindings/look/tokens.json").path, made.get().dir("res").asFile.path)
}

tasks.named("preBuild") { dependsOn(core, kotlinOfTheCore, look) }
