//! Nodal analysis of electrical networks; knows nothing of washing machines.
