//! Where a page server listens, and when it stops. Decides that it listens on this machine alone, that the
//! address is printed before it is opened, and that a request under way is answered before the end. Leaves
//! every page to whoever made the router, and how many are let in to [`super::connections`].
//!
//! The address goes to the browser through the system's own opener, so another account of the machine may
//! see it for a moment in the list of processes. It works once; whoever comes second is refused, and notices.

use std::io::Write;
use std::net::{Ipv4Addr, TcpListener};
use std::time::Duration;

use axum::Router;
use tokio::sync::mpsc;

use super::connections;
use crate::failure::Failure;
use crate::print;

/// How long an answer under way may take once the end was asked for.
const GRACE: Duration = Duration::from_secs(3);

/// A place to listen on, on this machine alone.
pub(crate) struct Listening {
    listener: TcpListener,
    port: u16,
}

impl Listening {
    /// Takes a port; 0 is one that is free.
    ///
    /// # Errors
    /// The port is taken.
    pub(crate) fn on(port: u16) -> Result<Self, Failure> {
        let taken =
            |_| Failure::input("This port cannot be used. Choose another, or leave --port out.");
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port)).map_err(taken)?;
        listener.set_nonblocking(true).map_err(taken)?;
        let port = listener.local_addr().map_err(taken)?.port();
        Ok(Self { listener, port })
    }

    /// Which port.
    pub(crate) fn port(&self) -> u16 {
        self.port
    }

    /// Prints the address, opens it where that is wanted, and serves until a signal asks for the end.
    ///
    /// # Errors
    /// The system gives no server.
    pub(crate) fn serve(self, router: Router, address: &str, open: bool) -> Result<(), Failure> {
        let broken = |_| Failure::Else("The pages cannot be shown just now. Try again.".to_owned());
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
        let runtime = runtime.map_err(broken)?;
        let listener = self.listener;
        runtime.block_on(async move {
            let listener = tokio::net::TcpListener::from_std(listener).map_err(broken)?;
            let server = connections::serve(listener, router);
            let mut end = end_asked_for().map_err(broken)?;
            // The signals are caught by now: whoever reads the address may also stop the server.
            say(address);
            if open && open::that_detached(address).is_err() {
                print::to_stderr("No browser could be opened. Open the address above yourself.");
            }
            let _signal = end.recv().await;
            server.end(GRACE).await;
            Ok(())
        })
    }
}

fn say(address: &str) {
    let mut out = std::io::stdout().lock();
    // A closed terminal is no reason not to serve.
    let _ = writeln!(out, "{address}").and_then(|()| out.flush());
}

/// Tells when the terminal, the system or a person asks for the end.
fn end_asked_for() -> std::io::Result<mpsc::Receiver<()>> {
    use tokio::signal::unix::{SignalKind, signal};
    let (tell, told) = mpsc::channel(1);
    for kind in [SignalKind::interrupt(), SignalKind::terminate(), SignalKind::hangup()] {
        let mut signal = signal(kind)?;
        let tell = tell.clone();
        tokio::spawn(async move {
            let _came = signal.recv().await;
            let _heard = tell.send(()).await;
        });
    }
    Ok(told)
}
