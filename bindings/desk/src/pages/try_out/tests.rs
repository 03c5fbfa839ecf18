//! The pages in this process, without a socket.
