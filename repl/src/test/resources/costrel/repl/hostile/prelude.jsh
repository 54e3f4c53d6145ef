System.setProperty("costrel.test.executed", "yes");
