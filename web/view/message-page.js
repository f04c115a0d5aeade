import { startTheme } from "./theme.js";

startTheme();
