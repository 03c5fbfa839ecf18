//! The connections of a page server. Decides how many there are at a time, how long the head of a request may
//! take and how long it may be, and which connection gives way to a newcomer: the one that was left longest
//! without a request being answered on it, but none that has only just come. So no program that only opens
//! connections, or writes into them as slowly as it can, keeps a page from anybody; and one that opens many at once
//! throws nobody out who was about to ask. Leaves how long a body may be and may take to [`super::form`].

use std::convert::Infallible;
use std::io;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use axum::Router;
use axum::extract::Request;
use axum::response::Response;
use hyper::body::Incoming;
use hyper::rt::{Read, Write};
use hyper::server::conn::http1;
use hyper::service::{Service, service_fn};
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::server::graceful::GracefulShutdown;
use hyper_util::service::TowerToHyperService;
use tokio::net::TcpListener;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};
use tokio::task::{AbortHandle, JoinHandle};
use tokio::time::Instant;

/// The most connections at a time. Browsers open about six; the usual limit of open files is 1024.
const MOST: usize = 256;
/// How long the head of a request may take, and how long a connection may lie idle before the next one.
const HEAD_WITHIN: Duration = Duration::from_secs(10);
/// How long whoever has just come is left to begin, however many come after.
const BEGIN_WITHIN: Duration = Duration::from_millis(500);
/// The longest head of a request, in bytes.
const HEAD_MOST: usize = 32 * 1024;
/// How soon it is tried again where nothing can be taken just now.
const A_MOMENT: Duration = Duration::from_millis(50);

/// A server that takes connections.
pub(super) struct Serving {
    taking: JoinHandle<()>,
    graceful: Arc<GracefulShutdown>,
}

impl Serving {
    /// Takes no more, and lets what is being answered come to its end for so long.
    pub(super) async fn end(self, grace: Duration) {
        self.taking.abort();
        let _ended = self.taking.await;
        if let Some(graceful) = Arc::into_inner(self.graceful) {
            let _in_time = tokio::time::timeout(grace, graceful.shutdown()).await;
        }
    }
}

/// Serves these pages to whoever connects.
pub(super) fn serve(listener: TcpListener, router: Router) -> Serving {
    let graceful = Arc::new(GracefulShutdown::new());
    let taking = tokio::spawn(take(listener, router, graceful.clone()));
    Serving { taking, graceful }
}

async fn take(listener: TcpListener, router: Router, graceful: Arc<GracefulShutdown>) {
    let held = Arc::new(Held::default());
    let places = Arc::new(Semaphore::new(MOST));
    loop {
        let stream = match listener.accept().await {
            Ok((stream, _)) => stream,
            Err(error) if is_of_one(&error) => continue,
            // There are no more files to be opened, or no memory.
            Err(_) => {
                held.give_way(Instant::now());
                tokio::time::sleep(A_MOMENT).await;
                continue;
            }
        };
        let place = place(&places, &held).await;
        let own = held.newcomer();
        let kept = Kept { held: held.clone(), own: own.clone(), _place: place };
        let connection = connection(TokioIo::new(stream), router.clone(), own.clone());
        let connection = graceful.watch(connection);
        let task = tokio::spawn(async move {
            // Whoever breaks a connection off is told nothing.
            let _ended = connection.await;
            drop(kept);
        });
        // One thread runs all of this, so the task has not begun yet, and cannot have ended.
        held.all().push(Listed { own, came: Instant::now(), task: task.abort_handle() });
    }
}

/// A place for a newcomer. Where all are taken, somebody gives way; where all are being answered or have only just
/// come, it waits.
async fn place(places: &Arc<Semaphore>, held: &Held) -> Option<OwnedSemaphorePermit> {
    if let Ok(place) = places.clone().try_acquire_owned() {
        return Some(place);
    }
    loop {
        held.give_way(Instant::now());
        let place = tokio::time::timeout(A_MOMENT, places.clone().acquire_owned()).await;
        if let Ok(place) = place {
            return place.ok();
        }
    }
}

/// Whether an error of `accept` concerns only the one that was connecting.
fn is_of_one(error: &io::Error) -> bool {
    use io::ErrorKind::{ConnectionAborted, ConnectionRefused, ConnectionReset, Interrupted};
    matches!(error.kind(), ConnectionAborted | ConnectionRefused | ConnectionReset | Interrupted)
}

/// What answers the requests of a connection.
pub(crate) trait Answers:
    Service<Request<Incoming>, Response = Response, Error = Infallible, Future: Send>
{
}

impl<S> Answers for S where
    S: Service<Request<Incoming>, Response = Response, Error = Infallible, Future: Send>
{
}

/// One connection, from its first byte to its end.
pub(crate) fn connection<I: Read + Write + Unpin + 'static>(
    io: I,
    router: Router,
    own: Arc<Own>,
) -> http1::Connection<I, impl Answers> {
    let answer = service_fn(move |request: Request<Incoming>| {
        let router = TowerToHyperService::new(router.clone());
        let answering = own.clone().answering();
        async move {
            let answer = router.call(request).await;
            drop(answering);
            answer
        }
    });
    http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(HEAD_WITHIN)
        .max_header_size(HEAD_MOST)
        .serve_connection(io, answer)
}

/// What is known of a connection while it is there.
#[derive(Default)]
pub(crate) struct Own {
    /// The head of a request came, and it was not answered yet.
    answering: AtomicBool,
    /// When it was last used: a number that only grows.
    used: AtomicU64,
    uses: Arc<AtomicU64>,
}

impl Own {
    fn answering(self: Arc<Self>) -> Answering {
        self.answering.store(true, Ordering::Relaxed);
        Answering(self)
    }

    fn use_now(&self) {
        self.used.store(self.uses.fetch_add(1, Ordering::Relaxed), Ordering::Relaxed);
    }
}

/// A request is being answered until this is dropped, be it answered or broken off.
struct Answering(Arc<Own>);

impl Drop for Answering {
    fn drop(&mut self) {
        self.0.use_now();
        self.0.answering.store(false, Ordering::Relaxed);
    }
}

/// A connection on the list of all.
struct Listed {
    own: Arc<Own>,
    came: Instant,
    task: AbortHandle,
}

impl Listed {
    /// Whether it has to go where somebody must: nothing is being answered on it, and it had its time to begin.
    fn can_go(&self, now: Instant) -> bool {
        now.duration_since(self.came) >= BEGIN_WITHIN
            && !self.own.answering.load(Ordering::Relaxed)
            && !self.task.is_finished()
    }
}

/// All connections there are.
#[derive(Default)]
struct Held {
    all: Mutex<Vec<Listed>>,
    uses: Arc<AtomicU64>,
}

impl Held {
    fn all(&self) -> MutexGuard<'_, Vec<Listed>> {
        self.all.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn newcomer(&self) -> Arc<Own> {
        let own = Own { uses: self.uses.clone(), ..Own::default() };
        own.use_now();
        Arc::new(own)
    }

    /// Ends the connection that was left longest, if there is one that can go.
    fn give_way(&self, now: Instant) {
        let all = self.all();
        let idle = all.iter().filter(|one| one.can_go(now));
        if let Some(one) = idle.min_by_key(|one| one.own.used.load(Ordering::Relaxed)) {
            one.task.abort();
        }
    }
}

/// Takes a connection off the list when it ends, whichever way.
struct Kept {
    held: Arc<Held>,
    own: Arc<Own>,
    _place: Option<OwnedSemaphorePermit>,
}

impl Drop for Kept {
    fn drop(&mut self) {
        self.held.all().retain(|one| !Arc::ptr_eq(&one.own, &self.own));
    }
}

#[cfg(test)]
mod tests;
