// Starts the program in a thread of its own; site.mjs fills in its address. The first message is the compiled program.
import { initSync } from "{{program}}";

onmessage = ({ data }) => {
  onmessage = null;
  initSync({ module: data });
};
