// Starts the worker that keeps the site for use without a network. In a frame the host decides what is kept.
if (window.top === window && "serviceWorker" in navigator) {
  const keeper = navigator.serviceWorker;
  const hadOne = keeper.controller !== null;
  let touched = false;
  for (const act of ["pointerdown", "keydown"]) addEventListener(act, () => (touched = true), { once: true, capture: true });

  // A newer build may take over only a page on which nothing has been done, and never one that shows a job.
  const idle = () => !touched && /^#?\/?(jobs\/?)?$/.test(location.hash);
  // On any other page a line says so, and a person decides.
  let asked = false;
  const offer = (worker) => {
    if (!hadOne) return;
    if (idle()) return worker.postMessage("take over");
    document.documentElement.dataset.newer = "";
    dispatchEvent(new Event("newer-waits"));
    addEventListener("newer-take", () => {
      asked = true;
      worker.postMessage("take over");
    });
  };
  keeper.addEventListener("controllerchange", () => {
    if (asked || (hadOne && idle())) location.reload();
  });
  addEventListener("load", async () => {
    const registration = await keeper.register("./offline.js").catch(() => null);
    if (!registration) return; // storage is full or forbidden: the page works all the same, with a network
    if (registration.waiting) offer(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const worker = registration.installing;
      worker.addEventListener("statechange", () => {
        if (worker.state === "installed") offer(worker);
      });
    });
  });
}
